// `baywright convert`: a quantity in another unit, as the guides would print it.
import {
  compatible,
  convert,
  explainIncompatible,
  formatMeasure,
  parseQuantity,
  parseUnit,
} from '@baywright/language';
import { defineCommand, flag } from '../command.js';
import { CannotRun } from '../shell.js';

export default defineCommand({
  name: 'convert',
  summary: 'give a quantity in another unit',
  docs: `Converts exactly and rounds once, to as many digits as the value was written with (NIST SP 811, B.7). Limits are rounded to the safe side.

Units are read as a workshop types them: Nm, ft-lb, in-lb, qt, degC.`,
  takes: [
    { name: 'quantity', docs: 'a value with its unit; tolerances and ranges too' },
    { name: 'unit', docs: 'the unit wanted' },
  ],
  options: { exact: flag('--exact', 'do not round') },
  examples: [
    ['baywright convert "85 in-lb" Nm', '9.6 N·m'],
    ['baywright convert "105 to 115 Nm" ft-lb', 'a range stays inside its limits'],
    ['baywright convert "1 US gal" L --exact', '3.785411784 L'],
  ],
  run({ shell }, [written = '', wanted = ''], { exact }) {
    // Asked for first without help, so that a spelling with two readings takes the one that the other side wants.
    const plain = parseQuantity(written);
    const target = parseUnit(wanted, 'measure' in plain ? { expected: [plain.measure.unit.kind] } : {});
    if ('problem' in target) throw new CannotRun(target.problem);
    const quantity = parseQuantity(written, { expected: [target.unit.kind] });
    if ('problem' in quantity) throw new CannotRun(quantity.problem);
    const { measure } = quantity;
    if (!compatible(measure.unit, target.unit)) {
      throw new CannotRun(explainIncompatible(measure.unit, target.unit, written.trim()));
    }
    shell.out.write(`${formatMeasure(convert(measure, target.unit, { exact }))}\n`);
    return 0;
  },
});
