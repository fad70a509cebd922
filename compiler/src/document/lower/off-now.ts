// The hand-over sheet: what the person who takes over at a line of the procedure finds, and where it goes back on.
import {
  detailText,
  lastActBefore,
  phrase,
  phraseText,
  STATE_GROUPS,
  type StateFact,
  type StateGroup,
  stateAt,
} from '@baywright/language';
import { type Block, type BlockOf, walkBlocks } from '../blocks.js';
import { type Prose, text } from '../inline.js';
import { clockProse } from './clocks.js';
import { capitalFirst } from './names.js';
import type { Print } from './print.js';
import { stopped } from './sentences.js';
import { leadOf } from './sheets.js';
import { titleOf } from './texts.js';
import { rowKey, type Walk } from './walk.js';

type OffNow = BlockOf<'off-now'>;

export function offNowBlocks(walk: Walk, steps: readonly BlockOf<'step'>[]): Block[] {
  const { print } = walk;
  const { language } = print;
  const offset = print.choice.at ?? print.analysis.text.length;
  const facts = factsAt(print, offset);
  const count = (groups: readonly StateGroup[]): number =>
    facts.filter(({ group }) => groups.includes(group)).length;
  const line = print.analysis.text.slice(0, offset).split('\n').length;
  return [
    { kind: 'heading', title: phrase('hand-over-sheet', language), lead: leadOf(print) },
    {
      kind: 'off-now',
      at: placeText(walk, steps, line),
      rail: { off: count(['off', 'hung', 'disconnected', 'capped']), loose: count(['loose', 'untorqued']) },
      groups: groupsOf(walk, facts, offset),
      clocks: [],
      bans: bansAt(walk, facts),
      torques: torquesLeft(print, facts),
    },
  ];
}

/** `After 5.7, Fit the hub`: the last row above the line; the line's number where there is none. */
function placeText({ print }: Walk, steps: readonly BlockOf<'step'>[], line: number): string {
  const rows = steps.flatMap((step) =>
    [...walkBlocks(step.items)].flatMap((row) => (row.kind === 'row' ? [{ row, title: step.title }] : [])),
  );
  const last = rows.findLast(
    ({ row: { source } }) => source?.file === print.analysis.path && source.line < line,
  );
  if (!last) return phraseText('line-number', print.language, { number: line });
  return phraseText('after-row', print.language, { line: last.row.number, title: last.title });
}

function factsAt(print: Print, offset: number): StateFact[] {
  const [only] = print.sides;
  const side: Record<string, string> =
    print.sides.length === 1 && only?.word !== undefined ? { side: only.word } : {};
  return print.run ? stateAt(print.run, offset, { ...print.choice.option, ...side }) : [];
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

/** Verbs that bring a thing back. */
const BACK: ReadonlySet<string> = new Set([
  'install',
  'connect',
  'uncap',
  'torque',
  'tighten',
  'fill',
  'bleed',
  'adjust',
  'lower',
  'unchock',
  'untag',
  'untie',
  'set',
]);

/** The first row behind the place of the sheet at which a thing comes back. */
function nextRow({ print, actRows }: Walk, { thing }: StateFact, offset: number): string | undefined {
  if (!print.run) return undefined;
  const from = lastActBefore(print.run, offset);
  const back = print.run.machine.acts.find(
    ({ index, statement }) =>
      index > from &&
      actRows.has(rowKey(index, thing)) &&
      statement !== undefined &&
      (BACK.has(statement.verb.word) || (statement.verb.word === 'remove' && thing.kind === 'temporary')),
  );
  return back && actRows.get(rowKey(back.index, thing))?.number;
}

function torquesLeft(print: Print, facts: readonly StateFact[]): OffNow['torques'] {
  return facts.flatMap(({ group, thing }) => {
    const torque =
      group === 'loose' || group === 'untorqued'
        ? print.uses.torques.find((one) => one.thing === thing)
        : undefined;
    const figure = torque?.stages.at(-1)?.figure;
    return torque && figure ? [{ joint: torque.joint, figure, number: torque.number }] : [];
  });
}

/** Clocks of sealants that run, as sentences. */
function bansAt(walk: Walk, facts: readonly StateFact[]): Prose[] {
  const wet = new Set(facts.filter(({ group }) => group === 'clock').map(({ thing }) => thing));
  return walk.clocks
    .filter(({ part }) => wet.has(part))
    .map((clock) => stopped(clockProse(walk.print, clock)));
}
