// `baywright torque`: what a torque does to a bolt, and what it takes to set it.
import {
  convertRounded,
  formatMeasure,
  type Measure,
  numberOf,
  otherSystem,
  parseQuantity,
  toSI,
  trade,
} from '@baywright/language';
import { choice, defineCommand, list, text } from '../command.js';
import { CannotRun } from '../shell.js';

const CONDITIONS = ['as delivered', 'dry', 'oiled', 'grease', 'anti-seize', 'threadlocker', 'ptfe'] as const;

export default defineCommand({
  name: 'torque',
  summary: 'tell what a torque does to a bolt',
  docs: `Works out preload, share of proof and of yield load (T = K·d·F; ISO 898-1, SAE J429, ISO 3506-1), the usual chart torque, head sizes and the socket drive. The exit code is 1 where the torque would stretch the bolt for good, or is far too low to hold.

The figures are for judging a specification, not for making one: the maker's data comes first.`,
  takes: [{ name: 'bolt', docs: 'thread and class, such as "M12x1.75 10.9" or "1/2-13 UNC grade 8"' }],
  options: {
    at: text('--at <torque>', 'the torque to judge; without it, the usual chart torque is told'),
    thread: choice('--thread <condition>', 'what is on the thread', CONDITIONS, 'as delivered'),
    wrench: list(
      '--wrench <range>',
      'the range of a torque wrench in the shop, "20 to 100 Nm"; may be repeated',
    ),
  },
  examples: [
    ['baywright torque "M12x1.75 10.9" --at "115 Nm"', 'judge a torque'],
    ['baywright torque "1/2-13 UNC grade 8" --thread oiled', 'the usual chart torque'],
    [
      'baywright torque "M8 8.8" --at "25 Nm" --wrench "5 to 50 Nm" --wrench "20 to 200 Nm"',
      'choose a wrench',
    ],
  ],
  run({ shell, paint }, [bolt = ''], options) {
    const { thread, class: strengthClass } = readBolt(bolt);
    const given = options.at === undefined ? undefined : readTorque(options.at);
    const lubrication = options.thread === 'as delivered' ? undefined : options.thread;
    const writtenUnit = UNITS.find((symbol) => symbol === given?.measure.unit.symbol);
    const joint = (torqueNm: number) =>
      trade.checkJoint({ thread, class: strengthClass, torqueNm, lubrication, writtenUnit });
    const chart = joint(1)?.chartTorqueNm;
    if (chart === undefined)
      throw new CannotRun(`nothing can be worked out for ${bolt}: its strength is not in the tables`);
    const torqueNm = given?.torqueNm ?? chart;
    const check = joint(torqueNm);
    if (check === undefined) throw new CannotRun('the torque must be more than nothing');
    const kN = (newton: number) => (newton / 1000).toFixed(1);
    const percent = (share: number) => `${Math.round(share * 100)} %`;
    const rows: [string, string][] = [
      ['Bolt', `${thread.designation}, ${strengthClass.printed}`],
      ['Thread', `${check.condition}: K ${check.kNominal}, seen between ${check.kRange.join(' and ')}`],
      [given === undefined ? 'Usual torque' : 'Torque', bothUnits(given?.measure ?? newtonMetres(chart))],
      [
        'Preload',
        `${kN(check.preloadN)} kN (${check.preloadRangeN.map(kN).join(' to ')} kN over that range of K)`,
      ],
      ['Share', `${percent(check.shareOfProof)} of proof load, ${percent(check.shareOfYield)} of yield load`],
      ...(given === undefined
        ? []
        : [['Usual torque', `${bothUnits(newtonMetres(chart))}, at 75 % of proof load`] as [string, string]]),
      ...headRows(thread),
      ['Drive', `${trade.drive(torqueNm).inch} in`],
      ...(options.wrench.length === 0
        ? []
        : [['Wrench', wrenchFor(torqueNm, options.wrench)] as [string, string]]),
      ['Sources', check.sources.join('; ')],
    ];
    const width = Math.max(...rows.map(([name]) => name.length));
    shell.out.write(rows.map(([name, value]) => `${paint.bold(name.padEnd(width))}  ${value}\n`).join(''));
    if (check.verdict === 'silent') return 0;
    const verdict = VERDICTS[check.verdict];
    const suggestion = check.suggestion === undefined ? '.' : `; ${check.suggestion.replace(/[^?]$/, '$&.')}`;
    shell.out.write(`\n${paint.red(verdict)}${suggestion}\n`);
    return 1;
  },
});

/** Units whose exchange the joint check recognises. */
const UNITS = ['N·m', 'ft·lbf', 'in·lbf'] as const;

/** One row for each family of heads, the row's name on the first. */
function headRows(thread: trade.Thread): [string, string][] {
  const families = new Map<string, string[]>();
  for (const { family, printed } of trade.headSizes(thread))
    families.set(family, [...(families.get(family) ?? []), printed]);
  const lines = [...families].map(([family, sizes]) => `${sizes.join(', ')}: ${family}`);
  return lines.length === 0
    ? [['Heads', 'none in the tables']]
    : lines.map((line, i) => [i === 0 ? 'Heads' : '', line]);
}

const VERDICTS = {
  yields: 'This torque takes the bolt past its yield load',
  'inch-foot-exchanged': 'This torque takes the bolt past its yield load',
  low: 'This torque gives under a tenth of the proof load',
} as const;

function readBolt(bolt: string): Required<trade.FastenerNamed> {
  const named = trade.readFastener(bolt);
  if ('problem' in named)
    throw new CannotRun(named.problem + (named.nearest === undefined ? '' : `; near it: ${named.nearest}`));
  const { thread, class: strengthClass } = named;
  if (strengthClass === undefined)
    throw new CannotRun('thread and class are both needed, as in "M12x1.75 10.9"');
  return { thread, class: strengthClass };
}

function readTorque(written: string): { measure: Measure; torqueNm: number } {
  const quantity = readKind(written, 'torque');
  const { nominal, high, low } = toSI(quantity);
  const value = nominal ?? high ?? low;
  return { measure: quantity, torqueNm: value === undefined ? 0 : numberOf(value) };
}

function readKind(written: string, kind: 'torque'): Measure {
  const quantity = parseQuantity(written, { expected: [kind] });
  if ('problem' in quantity) throw new CannotRun(quantity.problem);
  if (quantity.measure.unit.kind !== kind) {
    throw new CannotRun(`${written.trim()} is no ${kind}; write it as 115 Nm, 85 ft-lb or 85 in-lb`);
  }
  return quantity.measure;
}

/** A computed torque, at the three figures that a wrench can be set to. */
function newtonMetres(value: number): Measure {
  const quantity = parseQuantity(`${Number(value.toPrecision(3))} N·m`);
  if ('problem' in quantity) throw new CannotRun(quantity.problem);
  return quantity.measure;
}

function bothUnits(measure: Measure): string {
  const other = otherSystem(measure);
  const beside = other === undefined ? '' : ` (${formatMeasure(convertRounded(measure, other))})`;
  return `${formatMeasure(measure)}${beside}`;
}

function wrenchFor(torqueNm: number, ranges: readonly string[]): string {
  const tools = ranges.map((name) => {
    const { low, high } = toSI(readKind(name, 'torque'));
    if (low === undefined || high === undefined)
      throw new CannotRun(`a wrench has a range, as in "20 to 100 Nm"`);
    return { name, lowNm: numberOf(low), highNm: numberOf(high) };
  });
  const { tool, fit } = trade.chooseWrench(torqueNm, tools);
  if (tool === undefined) return 'none of these reaches this torque';
  return fit === 'good' ? tool.name : `${tool.name}, at the low end of its marks`;
}
