// The hand-over sheet: what the person who takes over at a line of the procedure finds, and where it goes back on.
import {
  detailText,
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
import type { Walk } from './walk.js';

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
      groups: groupsOf(walk, facts),
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

function groupsOf(walk: Walk, facts: readonly StateFact[]): OffNow['groups'] {
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
        const next = nextRow(walk, fact);
        return {
          what: [text(parts.filter((part) => part !== '').join(', '))],
          since: numberOf(walk, fact.act?.statement?.verb.word, fact.thing.name) ?? '–',
          ...(next === undefined ? {} : { next: [text(next)] as Prose }),
        };
      });
    return rows.length === 0 ? [] : [{ title: phrase(`group-${group}`, print.language), rows }];
  });
}

/** Verbs that bring a thing back, in the order in which they would. */
const BACK = [
  'install',
  'connect',
  'uncap',
  'torque',
  'tighten',
  'fill',
  'bleed',
  'adjust',
  'remove',
  'lower',
  'unchock',
  'set',
];

/** The row at which a thing comes back. */
function nextRow(walk: Walk, { act, thing }: StateFact): string | undefined {
  return BACK.filter((verb) => verb !== act?.statement?.verb.word)
    .map((verb) => numberOf(walk, verb, thing.name))
    .find((number) => number !== undefined);
}

const numberOf = (walk: Walk, verb: string | undefined, name: string): string | undefined =>
  walk.done.get(`${verb} ${name}`)?.number;

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
