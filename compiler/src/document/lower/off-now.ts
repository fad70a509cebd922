// The hand-over sheet: what the person who takes over at a line of the procedure finds, and where it goes back on.
import {
  detailText,
  lastActBefore,
  type Make,
  phrase,
  phraseText,
  STATE_GROUPS,
  type StateFact,
  type StateGroup,
  stateAt,
} from '@baywright/language';
import { type Block, type BlockOf, walkBlocks } from '../blocks.js';
import type { Ban } from '../document.js';
import { type Prose, text } from '../inline.js';
import type { Running } from './clocks.js';
import { capitalFirst } from './names.js';
import { type GuideRow, openOnSides, turnsProse } from './open-on-sides.js';
import type { Print } from './print.js';
import { leadOf } from './sheets.js';
import { titleOf } from './texts.js';
import { rowKey, type Walk } from './walk.js';

type OffNow = BlockOf<'off-now'>;

export function offNowBlocks(walk: Walk, steps: readonly BlockOf<'step'>[], bans: readonly Ban[]): Block[] {
  const { print } = walk;
  const { language } = print;
  const offset = print.choice.at ?? print.analysis.text.length;
  const line = print.analysis.text.slice(0, offset).split('\n').length;
  const rows = steps.flatMap(({ title, items }) =>
    [...walkBlocks(items)].flatMap((row): GuideRow[] => (row.kind === 'row' ? [{ row, title }] : [])),
  );
  const next = nextIndex(print, rows, line);
  const done = rows.slice(0, next);
  const isDone = (row: string | undefined): boolean => done.some(({ row: { id } }) => id === row);
  return [
    { kind: 'heading', title: phrase('hand-over-sheet', language), lead: leadOf(print) },
    {
      kind: 'off-now',
      at: placeText(print, done.at(-1), line),
      ...openAt(walk, rows, next, offset),
      clocks: walk.clocks.filter(({ from, to }) => isDone(from.row) && !isDone(to?.row)).map(clockRow(print)),
      bans: bans
        .filter(({ fromRow, untilRow }) => isDone(fromRow) && !isDone(untilRow))
        .map(({ text: said }) => said),
    },
  ];
}

/** Off the vehicle, and on it without their torque. */
const OFF: readonly StateGroup[] = ['off', 'hung', 'disconnected', 'capped'];
const LOOSE: readonly StateGroup[] = ['loose', 'untorqued'];

function openAt(
  walk: Walk,
  rows: readonly GuideRow[],
  next: number,
  offset: number,
): Pick<OffNow, 'rail' | 'groups' | 'torques'> {
  const facts = factsAt(walk.print, offset);
  if (walk.print.sides.length > 1) {
    const { groups, ...found } = openOnSides(walk, rows, next);
    const others = facts.filter(({ group }) => ![...OFF, ...LOOSE].includes(group));
    return { ...found, groups: [...groups, ...groupsOf(walk, others, offset)] };
  }
  const count = (groups: readonly StateGroup[]): number =>
    facts.filter(({ group }) => groups.includes(group)).length;
  return {
    rail: { off: count(OFF), loose: count(LOOSE) },
    groups: groupsOf(walk, facts, offset),
    torques: torquesLeft(walk.print, facts),
  };
}

/** The first row that is not done when the work stops before a line: of work on both sides, on the first side. */
function nextIndex(print: Print, rows: readonly GuideRow[], line: number): number {
  const lines = rows.map(({ row: { source } }) =>
    source?.file === print.analysis.path ? source.line : undefined,
  );
  const later = lines.flatMap((own) => (own !== undefined && own >= line ? [own] : []));
  const next = lines.indexOf(Math.min(...later));
  return next < 0 ? rows.length : next;
}

/** `After 5.7, Fit the hub`: the last row above the line; the line's number where there is none. */
const placeText = ({ language }: Print, last: GuideRow | undefined, line: number): string =>
  last
    ? phraseText('after-row', language, { line: last.row.number, title: last.title })
    : phraseText('line-number', language, { number: line });

const clockRow =
  ({ language }: Print) =>
  ({ def, time, from, to }: Running): OffNow['clocks'][number] => ({
    name: capitalFirst(phrase(def.name, language)),
    length: { value: time, unit: '' },
    from: from.number,
    next: [text(to?.number ?? '–')],
  });

function factsAt(print: Print, offset: number): StateFact[] {
  const [only] = print.sides;
  const side: Record<string, string> =
    print.sides.length === 1 && only?.word !== undefined ? { side: only.word } : {};
  const facts = print.run ? stateAt(print.run, offset, { ...print.choice.option, ...side }) : [];
  // Clocks are told with the rows that start and end them.
  return facts.filter(({ group }) => group !== 'clock');
}

function groupsOf(walk: Walk, facts: readonly StateFact[], offset: number): OffNow['groups'] {
  const { print } = walk;
  return (Object.keys(STATE_GROUPS) as StateGroup[]).flatMap((group) => {
    const rows = facts
      .filter((fact) => fact.group === group)
      .map((fact) => {
        const parts = [
          capitalFirst(titleOf(print, fact.thing)),
          detailText(fact.said, print.language),
          fact.variants ?? '',
        ];
        const next = nextRow(walk, fact, offset);
        return {
          what: [text(parts.filter((part) => part !== '').join(', '))],
          since: (fact.act && walk.actRows.get(rowKey(fact.act.index, fact.thing))?.number) ?? '–',
          ...(next === undefined ? {} : { next: [text(next)] as Prose }),
        };
      });
    return rows.length === 0 ? [] : [{ title: phrase(`group-${group}`, print.language), rows }];
  });
}

/** What brings a thing back as it came in. */
const BACK: ReadonlySet<Make> = new Set<Make>([
  'fitted',
  'started',
  'connected',
  'uncapped',
  'torqued',
  'tight',
  'filled',
  'bled',
  'adjusted',
  'lowered',
  'unchocked',
  'untagged',
  'untied',
  'set',
  'removed',
]);

/** The first row behind the place of the sheet at which a thing comes back. */
function nextRow({ print, actRows }: Walk, { thing }: StateFact, offset: number): string | undefined {
  if (!print.run) return undefined;
  const from = lastActBefore(print.run, offset);
  const back = print.run.machine.acts.find(
    ({ index, statement }) =>
      index > from &&
      actRows.has(rowKey(index, thing)) &&
      (statement?.verb.on[thing.kind]?.makes.some((make) => BACK.has(make)) ?? false),
  );
  return back && actRows.get(rowKey(back.index, thing))?.number;
}

/** Of a joint that had some of its turns, the others. */
function torquesLeft(print: Print, facts: readonly StateFact[]): OffNow['torques'] {
  return facts.flatMap(({ group, thing, said }) => {
    const used =
      group === 'loose' || group === 'untorqued'
        ? print.uses.torques.filter((one) => one.thing === thing)
        : [];
    const turns = used.length > 1 && used.every(({ stages }) => stages.length === 1);
    const done = said.what === 'stage' ? said.stage : 0;
    const [first] = turns ? used.slice(done) : used;
    const left = first?.stages.slice(turns ? 0 : done) ?? [];
    if (!first || left.length === 0) return [];
    return [{ joint: first.joint, torque: turnsProse(left), number: first.number }];
  });
}
