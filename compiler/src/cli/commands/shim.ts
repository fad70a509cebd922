// `baywright shim`: which shim brings a gap or an end play inside its limit.
import { formatMeasure, type Measure, numberOf, parseQuantity, toSI, trade } from '@baywright/language';
import { defineCommand, list, text } from '../command.js';
import { CannotRun } from '../shell.js';

export default defineCommand({
  name: 'shim',
  summary: 'tell which shim brings a gap or an end play inside its limit',
  docs: `With --fitted, of one shim that fills a gap, as under a cam: a thicker one makes the gap smaller, and the nearest of those at hand to the middle of the limit is taken. Without it, of a pack that holds parts apart, as under a bearing cap: taking shims out makes the play smaller.

The exit code is 1 when no shim at hand brings the reading inside the limit. The figures come from your reading: measure again when the shim is in.`,
  takes: [
    { name: 'reading', docs: 'what was measured, such as "0.30 mm"' },
    { name: 'limit', docs: 'what is allowed, such as "0.15 to 0.25 mm"' },
  ],
  options: {
    fitted: text('--fitted <thickness>', 'the shim that is in now'),
    atHand: list(
      '--at-hand <thickness>',
      'a shim that could go in, or several parted by commas; may be repeated',
    ),
    step: text('--step <thickness>', 'of a pack: how thick one shim is'),
  },
  examples: [
    [
      'baywright shim "0.30 mm" "0.15 to 0.25 mm" --fitted "2.50 mm" --at-hand "2.55 mm, 2.60 mm, 2.65 mm"',
      'a valve',
    ],
    ['baywright shim "0.30 mm" "0.05 to 0.15 mm" --step "0.05 mm"', 'the pack under a bearing cap'],
  ],
  run({ shell }, [read = '', allowed = ''], { fitted, atHand, step }) {
    const reading = lengthOf(read);
    const limit = lengthOf(allowed);
    const { low, high } = toSI(limit);
    if (low === undefined || high === undefined)
      throw new CannotRun(`the limit needs both ends, as in "0.15 to 0.25 mm"; ${allowed.trim()} has one`);
    const bounds = { min: numberOf(low), max: numberOf(high) };
    const measured = metres(reading);
    const say = (value: number): string => inUnitOf(reading, value);
    const rows: [string, string][] = [];
    let isWithin = true;
    if (fitted !== undefined) {
      const shims = atHand.flatMap((one) => one.split(',')).map((one) => metres(lengthOf(one)));
      if (shims.length === 0)
        throw new CannotRun('say which shims there are: --at-hand "2.55 mm, 2.60 mm, 2.65 mm"');
      const choice = trade.shimFor(metres(lengthOf(fitted)), measured, bounds, shims);
      if (choice === undefined) throw new CannotRun('there is no shim to choose from');
      isWithin = choice.within;
      rows.push(
        ['Wanted', say(choice.wanted)],
        ['Fit', say(choice.shim)],
        ['Gap then', say(choice.clearance)],
      );
    } else {
      const change = trade.endPlay(measured, bounds, step === undefined ? undefined : metres(lengthOf(step)));
      rows.push(['Change', changeOf(change, say)]);
      const then = measured - change.takeOut;
      if (change.takeOut !== 0) rows.push(['Play then', say(then)]);
      isWithin = trade.limitCheck(then, bounds).verdict === 'within';
    }
    const { verdict } = trade.limitCheck(measured, bounds);
    const judged = verdict === 'within' ? 'inside' : verdict;
    rows.unshift(['Reading', `${formatMeasure(reading)}, ${judged} ${formatMeasure(limit)}`]);
    if (!isWithin) rows.push(['Mind', 'this is still outside the limit: no shim named here is enough']);
    const width = Math.max(...rows.map(([name]) => name.length));
    shell.out.write(rows.map(([name, value]) => `${name.padEnd(width)}  ${value}\n`).join(''));
    return isWithin ? 0 : 1;
  },
});

function changeOf(
  { takeOut, steps }: { readonly takeOut: number; readonly steps?: number },
  say: (value: number) => string,
): string {
  if (takeOut === 0) return 'none';
  const verb = takeOut > 0 ? 'take out' : 'put in';
  const count =
    steps === undefined ? '' : ` (${Math.abs(steps)} ${Math.abs(steps) === 1 ? 'shim' : 'shims'})`;
  return `${verb} ${say(Math.abs(takeOut))}${count}`;
}

function lengthOf(written: string): Measure {
  const quantity = parseQuantity(written, { expected: ['length'] });
  if ('problem' in quantity) throw new CannotRun(quantity.problem);
  if (quantity.measure.unit.kind !== 'length')
    throw new CannotRun(`${written.trim()} is no length; write it as 0.30 mm or 0.012 in`);
  return quantity.measure;
}

function metres(measure: Measure): number {
  const { nominal, low, high } = toSI(measure);
  const value = nominal ?? low ?? high;
  return value === undefined ? 0 : numberOf(value);
}

/** A length in the unit of the reading, to as many places as it was read with. */
function inUnitOf(reading: Measure, value: number): string {
  const places = /\.(\d+)/.exec(formatMeasure(reading))?.[1]?.length ?? 0;
  const figure = (value / numberOf(reading.unit.factor)).toFixed(places);
  return `${figure} ${reading.unit.symbol}`;
}
