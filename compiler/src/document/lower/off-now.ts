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
import type { Ban } from '../document.js';
import { type Prose, text } from '../inline.js';
import type { Running } from './clocks.js';
import { capitalFirst } from './names.js';
import type { Print } from './print.js';
import { leadOf } from './sheets.js';
import { titleOf } from './texts.js';
import { rowKey, type Walk } from './walk.js';

type OffNow = BlockOf<'off-now'>;

export function offNowBlocks(walk: Walk, steps: readonly BlockOf<'step'>[], bans: readonly Ban[]): Block[] {
  const { print } = walk;
  const { language } = print;
  const offset = print.choice.at ?? print.analysis.text.length;
  const facts = factsAt(print, offset);
  const count = (groups: readonly StateGroup[]): number =>
    facts.filter(({ group }) => groups.includes(group)).length;
  const line = print.analysis.text.slice(0, offset).split('\n').length;
  const rows = rowsBefore(print, steps, line);
  const isDone = (row: string | undefined): boolean => rows.some(({ id }) => id === row);
  return [
    { kind: 'heading', title: phrase('hand-over-sheet', language), lead: leadOf(print) },
    {
      kind: 'off-now',
      at: placeText(print, rows.at(-1), line),
      rail: { off: count(['off', 'hung', 'disconnected', 'capped']), loose: count(['loose', 'untorqued']) },
      groups: groupsOf(walk, facts, offset),
      clocks: walk.clocks.filter(({ from, to }) => isDone(from.row) && !isDone(to?.row)).map(clockRow(print)),
      bans: bans
        .filter(({ fromRow, untilRow }) => isDone(fromRow) && !isDone(untilRow))
        .map(({ text: said }) => said),
      torques: torquesLeft(print, facts),
    },
  ];
}

interface DoneRow {
  readonly id: string;
  readonly number: string;
  /** Of its step. */
  readonly title: string;
}

/** The rows that are done when the work stops before a line: of work on both sides, on the first side. */
function rowsBefore(print: Print, steps: readonly BlockOf<'step'>[], line: number): readonly DoneRow[] {
  const rows = steps.flatMap((step) =>
    [...walkBlocks(step.items)].flatMap((block) =>
      block.kind === 'row'
        ? [
            {
              id: block.id,
              number: block.number,
              title: step.title,
              line: block.source?.file === print.analysis.path ? block.source.line : undefined,
            },
          ]
        : [],
    ),
  );
  const later = rows.flatMap(({ line: own }) => (own !== undefined && own >= line ? [own] : []));
  const next = rows.findIndex(({ line: own }) => own !== undefined && own === Math.min(...later));
  return next < 0 ? rows : rows.slice(0, next);
}

/** `After 5.7, Fit the hub`: the last row above the line; the line's number where there is none. */
const placeText = ({ language }: Print, last: DoneRow | undefined, line: number): string =>
  last
    ? phraseText('after-row', language, { line: last.number, title: last.title })
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
    const torque = left.flatMap(
      ({ label, figure, unit }, i): Prose => [
        text(`${i === 0 ? '' : ', '}${label === undefined ? '' : `${label} `}`),
        figure ? { kind: 'quantity', quantity: figure } : text(`? ${unit ?? ''}`),
      ],
    );
    return [{ joint: first.joint, torque, number: first.number }];
  });
}
