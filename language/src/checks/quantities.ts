// Q: every quantity of the file, one finding for each that is wrong, and values that nothing ordinary ever has.
import { type Finding, finding } from '../diagnostics/define.js';
import { implausibleValue } from '../diagnostics/quantities.js';
import type { Job } from '../names/job.js';
import { hasClause, type Thing } from '../names/model.js';
import { type WrittenQuantity, writtenQuantities } from '../names/quantities.js';
import {
  digitsFor,
  formatMeasure,
  formatNumber,
  implausible,
  type Measure,
  type QuantityUse,
  type Rational,
  roundTo,
  type Unit,
  unitText,
  usualUnits,
  valueFromSI,
} from '../quantity/index.js';
import type { Check } from './check.js';
import { faultOf } from './written-quantity.js';

export const quantities: Check = ({ job }) => {
  const { file } = job;
  const found: Finding[] = [];
  for (const quantity of writtenQuantities(file)) {
    const fault = writtenFault(quantity, job) ?? implausibleFault(quantity, job);
    if (fault) found.push(fault);
  }
  return found;
};

/** Measures that were found well written, with what their place wanted: a line keeps its measure when it moves. */
const sound = new WeakMap<Measure, Pick<WrittenQuantity['expected'], 'kinds'> & { isLimit: boolean }>();

function writtenFault(quantity: WrittenQuantity, { file }: Job): Finding | undefined {
  const { node, expected, thing, word } = quantity;
  // A figure alone where none goes is told of as that, N205: which reading is meant, the word before it says.
  const isDoubtful = node.amounts.some(({ unit }) => (unit?.readings.length ?? 0) > 0);
  if (word === 'bare' && isDoubtful && thing && thing.kind !== 'limit') return undefined;
  const isLimit = thing?.kind === 'limit';
  const known = node.measure && sound.get(node.measure);
  if (known && known.kinds === expected.kinds && known.isLimit === isLimit) return undefined;
  const fault = faultOf(quantity, file.path, file.tree.text);
  if (!fault && node.measure) sound.set(node.measure, { kinds: expected.kinds, isLimit });
  return fault;
}

function implausibleFault(quantity: WrittenQuantity, job: Job): Finding | undefined {
  const { node } = quantity;
  if (!node.measure) return undefined;
  const row = implausible(node.measure, useOf(quantity, job));
  if (!row) return undefined;
  const { unit } = node.measure;
  const written = job.file.tree.text.slice(node.start, node.end);
  const span = { start: node.start, end: node.end };
  return finding(
    implausibleValue,
    { file: job.file.path, span },
    {
      written,
      use: row.phrase,
      low: inUnit(row.low, unit),
      high: inUnit(row.high, unit),
      ordinary: ordinaryIn(node.measure, useOf(quantity, job)),
    },
  );
}

/** The units of its kind in which the same figure would be ordinary: `110 in·lbf` on a wheel nut is `110 N·m`. */
function ordinaryIn(measure: Measure, use: QuantityUse): string[] {
  return usualUnits([measure.unit.kind])
    .filter((unit) => unit !== measure.unit && !implausible({ ...measure, unit }, use))
    .map((unit) => formatMeasure({ ...measure, unit }));
}

/** A limit of a band in the unit written, to two figures. */
function inUnit(value: Rational, unit: Unit): string {
  const exact = valueFromSI(value, unit);
  const size = Math.abs(exact.valueOf());
  const decimals = size === 0 ? 0 : Math.max(0, 1 - Math.floor(Math.log10(size)));
  const rounded = roundTo(exact, decimals);
  return `${formatNumber(rounded, digitsFor(rounded))}${unitText(unit, rounded)}`;
}

/** What a value is for, as far as the file says it. */
function useOf({ thing, statement, word, expected }: WrittenQuantity, job: Job): QuantityUse {
  const object = thing ?? (statement ? objectOf(statement.items[0]?.name.text, job) : undefined);
  if (!object) return 'any';
  if (object.kind === 'fastener' && expected.kinds?.includes('torque')) {
    if (job.inverse(object, 'held by').some(({ of }) => of.marks.includes('wheel')))
      return 'wheel-nut torque';
    if (job.inverse(object, 'drain at').length > 0) return 'drain-plug torque';
  }
  if (object.kind === 'fluid' && expected.kinds?.includes('volume')) return 'fluid fill';
  if (
    object.kind === 'fluid' &&
    hasClause(object, 'refrigerant') &&
    (word === 'mass' || word === 'fill' || word === 'bare')
  )
    return 'refrigerant charge';
  const isPressure = expected.kinds?.length === 1 && expected.kinds[0] === 'pressure';
  if (isPressure && object.marks.some((mark) => mark === 'tyre' || mark === 'wheel')) return 'tyre pressure';
  return 'any';
}

function objectOf(name: string | undefined, job: Job): Thing | undefined {
  return name === undefined ? undefined : job.scope.resolve(name);
}
