// What stands beside a row: socket, torque, reading, inspection, clock; with the marks and the order of its set.
import {
  type BoundItem,
  type BoundStatement,
  phrase,
  phraseText,
  type Thing,
  writtenMinutes,
} from '@baywright/language';
import type { Beside, Marks, OrderDiagram } from '../beside.js';
import { type Prose, plain, text } from '../inline.js';
import { demand } from './asides.js';
import { headOf, orderOf } from './heads.js';
import { figureOf } from './measures.js';
import { capitalFirst, onSide, sideSuffix } from './names.js';
import type { Place, Print } from './print.js';
import { type LimitHere, limitsAt } from './readings.js';
import { orderWord } from './sentences.js';
import { titleOf, written } from './texts.js';
import { notesOfSources, torqueBoxes } from './torque-box.js';
import type { RowAt } from './uses.js';
import { sinceRow, type Walk } from './walk.js';

export interface Boxes {
  readonly beside: Beside[];
  readonly marks: Marks[];
  readonly notes: Prose[];
  readonly order?: OrderDiagram;
  readonly limits: readonly LimitHere[];
  /** Clauses that a box says and the sentence need not. */
  readonly without?: ReadonlySet<string>;
}

export function besidesOf(
  walk: Walk,
  statement: BoundStatement,
  objects: readonly BoundItem[],
  place: Place,
  at: RowAt,
  stagesDone: number,
): Boxes {
  const { verb } = statement;
  const thing = objects[0]?.thing;
  if (verb.alone?.makes.includes('waited')) return waitBoxes(walk, statement, at);
  if (thing?.kind === 'fastener' && (verb.later || verb.on.fastener?.needs.includes('has torque'))) {
    return torqueBoxes(walk.print, statement, thing, place, at, stagesDone);
  }
  const limits = objects.filter((object) => object.thing?.kind === 'limit');
  if (limits.length > 0)
    return verb.records === 'objects' ? NONE : readingBoxes(walk, statement, limits, place, at);
  if (isJudged(statement)) return inspectionBoxes(walk, statement, objects, place, at);
  return thing?.kind === 'fastener' ? socketBoxes(walk.print, statement, thing) : NONE;
}

/** Something is looked at and found good or not: by its verb, or by what stands below the line. */
function isJudged({ verb, line }: BoundStatement): boolean {
  return (
    verb.judges !== undefined ||
    line.children.some((child) =>
      child.kind === 'text'
        ? child.word === 'reject' || child.word === 'expect'
        : child.kind === 'if' && (child.test === 'rejected' || isLevelTest(child.test)),
    )
  );
}

const isLevelTest = (test: string | undefined): boolean => test === 'below' || test === 'above';

const NONE: Boxes = { beside: [], marks: [], notes: [], limits: [] };

function socketBoxes(print: Print, statement: BoundStatement, thing: Thing): Boxes {
  if (!statement.verb.turns) return NONE;
  const head = headOf(print, thing);
  const order = orderOf(print, thing, statement);
  if (head) print.uses.heads.push({ head, thing });
  return {
    ...NONE,
    beside: head ? [{ kind: 'socket', head }] : [],
    notes: order
      ? [
          [
            text(
              capitalFirst(
                phraseText('order-as', print.language, { order: orderWord(print, order.written) }),
              ),
            ),
          ],
        ]
      : [],
    without: new Set(['order']),
    ...(order && statement.clause('order') ? { order: order.diagram } : {}),
  };
}

function readingBoxes(
  walk: Walk,
  statement: BoundStatement,
  objects: readonly BoundItem[],
  place: Place,
  at: RowAt,
): Boxes {
  const { print } = walk;
  const places = placesOf(statement);
  const beside: Beside[] = [];
  const all: LimitHere[] = [];
  for (const { thing } of objects) {
    if (!thing) continue;
    const side = place.side && print.sides.length > 1 ? `-${place.side.word}` : '';
    const name = `${capitalFirst(titleOf(print, thing))}${sideSuffix(print, place)}`;
    const limits = limitsAt(print, thing, place.when);
    all.push(...limits);
    for (const [i, limit] of limits.entries()) {
      const id = `${thing.name}${side}${limits.length > 1 ? `-${i + 1}` : ''}-${at.row}`;
      walk.limits.set(id, thing.name);
      if (limit.per !== undefined) print.uses.sources.add(limit.per);
      const unit = limit.units[0]?.label;
      print.uses.readings.push({
        ...at,
        reading: id,
        places,
        what: name,
        limit: limit.limit,
        ...(unit === undefined ? {} : { unit }),
        ...onSide(print, place, titleOf(print, thing)),
      });
      beside.push({
        kind: 'reading',
        id,
        name,
        places,
        ...(limits.length > 1 ? { group: `${thing.name}-${at.row}` } : {}),
        units: limit.units,
        ...(limit.low === undefined ? {} : { low: limit.low }),
        ...(limit.high === undefined ? {} : { high: limit.high }),
        limit: limit.limit,
        ...(limit.fresh ? { fresh: limit.fresh } : {}),
        ...(limit.other ? { other: limit.other } : {}),
        ways: [],
      });
    }
  }
  return {
    ...NONE,
    beside,
    limits: all,
    notes: notesOfSources(
      all.map(({ per }) => per),
      print.language,
    ),
  };
}

function inspectionBoxes(
  walk: Walk,
  statement: BoundStatement,
  objects: readonly BoundItem[],
  place: Place,
  at: RowAt,
): Boxes {
  const { print } = walk;
  const titles = objects.map(({ thing, item }) => (thing ? titleOf(print, thing) : item.name.text));
  const isLevel = statement.verb.on.fluid?.makes.includes('levelled') ?? false;
  const named = isLevel
    ? phraseText('level-of', print.language, { object: titles.join(', ') })
    : titles.join(', ');
  const what = `${named}${sideSuffix(print, place)}`;
  const asked = statement.line.children.flatMap((line) =>
    line.kind === 'text' && (line.word === 'reject' || line.word === 'expect')
      ? [demand(print, line.word, written(print, statement.file, line.prose?.text ?? ''))]
      : [],
  );
  const limit = isLevel
    ? [text(phrase('outcome-level', print.language))]
    : asked.flatMap((words, i) => {
        const isClosed = plain(asked[i - 1] ?? []).endsWith('.');
        return i === 0 ? words : [text(isClosed ? ' ' : '; '), ...words];
      });
  const of = onSide(print, place, named);
  print.uses.readings.push({ ...at, places: 1, what: capitalFirst(what), limit, ...of });
  return {
    ...NONE,
    beside: [
      {
        kind: 'inspection',
        id: `look-${at.row}`,
        good: [],
        bad: [],
      },
    ],
  };
}

/** `at 6 places`: a bare number after `at`. More than fit a box are not written one by one. */
function placesOf(statement: BoundStatement): number {
  const amounts = statement.clause('at')?.spec?.stages[0]?.measure;
  const count = amounts && !amounts.measure ? amounts.amounts[0]?.number.value : undefined;
  const places = count ? Number(count.n / count.d) : 1;
  return places > MOST_PLACES ? 1 : Math.max(1, places);
}

const MOST_PLACES = 12;

function waitBoxes(walk: Walk, statement: BoundStatement, at: RowAt): Boxes {
  const { print } = walk;
  const node = statement.clause('bare')?.spec?.stages[0]?.measure;
  const minutes = writtenMinutes(node);
  if (minutes === undefined || !node?.measure) return NONE;
  const from = sinceRow(walk, statement);
  const name = phrase('waiting', print.language);
  return {
    ...NONE,
    beside: [
      {
        kind: 'clock',
        id: `wait-${at.row}`,
        sense: 'at least',
        seconds: Math.round(minutes * 60),
        length: figureOf(node.measure, print.language),
        name: print.language === 'de' ? name : name.toLowerCase(),
        ...(from ? { from } : {}),
      },
    ],
  };
}
