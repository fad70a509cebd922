// A statement as rows: one action a line, each with the box the hand needs at that line.
import {
  type Act,
  type BoundItem,
  type BoundStatement,
  bindStatement,
  isEachSide,
  isFormless,
  type Line,
  type Make,
  NEVER,
  phrase,
  phraseText,
} from '@baywright/language';
import type { Depends } from '../blocks.js';
import { type Prose, text } from '../inline.js';
import { noteAids } from './aids.js';
import { located, type Under, underOf } from './asides.js';
import { besidesOf } from './boxes.js';
import { clocksAt } from './clocks.js';
import { freshAt, noteFresh, readiedAt, renews } from './fresh.js';
import { pouredAt } from './poured.js';
import type { Place, SidePrint } from './print.js';
import { noteFields } from './record-fields.js';
import { sentence, stopped } from './sentences.js';
import { written } from './texts.js';
import type { RowAt } from './uses.js';
import { forSome, variantWords } from './variant-words.js';
import {
  changesSince,
  nextRow,
  type Out,
  openNow,
  railNow,
  rowKey,
  sidesOf,
  sinceRow,
  type Walk,
} from './walk.js';
import { lowerWear } from './wear.js';

export type StatementLine = Extract<Line, { kind: 'statement' }>;

/** What a branch hands down to the rows in it. */
export interface Leading {
  readonly condition?: Prose;
  readonly depends?: Depends;
}

/** The rows of a line; gives the last of them, that its `if` lines ask about. Undefined where nothing is printed. */
export function lowerStatement(
  walk: Walk,
  line: StatementLine,
  place: Place,
  out: Out,
  leading: Leading,
): RowAt | undefined {
  const { print } = walk;
  const { universe } = print.job;
  const statement = bindStatement(line, place.scope.file.path, place.scope);
  if (!statement) return unreadRow(walk, line, place, out);
  const when = universe.diagrams.and(place.when, print.job.where(line.guard));
  if (when === NEVER) return undefined;
  const here = { ...place, when };
  const variant = variantWords(print, when, place.when);
  const only: Leading =
    variant === undefined
      ? leading
      : {
          ...leading,
          condition: [
            ...(leading.condition ?? []),
            text(`${phraseText('only-with', print.language, { variant })}:`),
          ],
        };
  noteAids(walk, statement, here);
  if (statement.verb.word === 'wear') return lowerWear(walk, statement, here, out);
  const under = underOf(print, line.children, here);
  const groups = isSplit(statement) ? statement.objects.map((object) => [object]) : [statement.objects];
  let last: RowAt | undefined;
  groups.forEach((objects, i) => {
    const isApart =
      statement.verb.bothSides !== 'one line' && objects.some(({ thing }) => thing && isEachSide(thing));
    const runs: readonly (SidePrint | undefined)[] = here.side || !isApart ? [here.side] : print.sides;
    runs.forEach((side, k) => {
      const isLast = i === groups.length - 1 && k === runs.length - 1;
      last = oneRow(
        walk,
        statement,
        objects,
        { ...here, side },
        out,
        only,
        isLast ? under : undefined,
        i === 0 && k === 0,
      );
    });
  });
  for (const side of sidesOf(walk, here)) {
    const act = side.trace.next(line);
    if (act) side.trace.finish(act);
  }
  return last;
}

/** `marked front-axle`, `marked rear-axle`. */
const ENDS = ['front', 'rear'] as const;

/** What a line can do to a thing and leave it where it is. */
const LEAVES_IT: ReadonlySet<Make> = new Set(['outcome', 'cleaned', 'tagged', 'untagged', 'tied', 'untied']);

/** Things that change with the line are done one at a time; looking at several is one look. */
function isSplit({ verb, objects }: BoundStatement): boolean {
  const changes = new Set(['part', 'fastener', 'connection']);
  return (
    objects.length > 1 &&
    objects.some(
      ({ thing }) =>
        thing &&
        changes.has(thing.kind) &&
        (verb.on[thing.kind]?.makes.some((make) => !LEAVES_IT.has(make)) ?? false),
    )
  );
}

function oneRow(
  walk: Walk,
  statement: BoundStatement,
  objects: readonly BoundItem[],
  place: Place,
  out: Out,
  leading: Leading,
  under: Under | undefined,
  isFirst: boolean,
): RowAt {
  const { print } = walk;
  const { verb, line } = statement;
  const at = nextRow(walk);
  const thing = objects[0]?.thing;
  const before = openNow(walk);
  const [nearest] = sidesOf(walk, place);
  const stages = thing ? (nearest?.trace.stagesDone(thing) ?? 0) : 0;
  const readied = nearest ? readiedAt(print, statement, objects, place, nearest.trace) : [];
  for (const side of sidesOf(walk, place)) {
    const act = side.trace.next(line);
    moveTo(walk, side, act, objects);
    if (!act) continue;
    walk.acts.set(act.index, { first: walk.acts.get(act.index)?.first ?? at, last: at });
    for (const object of objects) {
      const key = object.thing && rowKey(act.index, object.thing);
      if (key !== undefined && !walk.actRows.has(key)) walk.actRows.set(key, at);
    }
  }
  const makes = thing ? (verb.on[thing.kind]?.makes ?? []) : [];
  const [first] = objects;
  const fresh = first && freshAt(print, statement, first, place);
  const freshNotes = first && fresh ? noteFresh(print, first, fresh, place, at) : [];
  const boxes = besidesOf(walk, statement, objects, place, at, stages);
  noteFields(print, statement, objects);
  const clocks = clocksAt(
    walk,
    statement,
    objects.flatMap((object) => (object.thing ? [object.thing] : [])),
    at,
    !print.job.universe.diagrams.implies(place.side?.when ?? print.when, place.when),
  );
  const byHand =
    makes.includes('started') && thing !== undefined && !isFormless(thing)
      ? [text(`, ${phrase('by-hand', print.language)}`)]
      : [];
  const poured = pouredAt(print, statement, objects, place);
  const said = sentence(print, statement, objects, {
    side: place.side,
    isBothSides: place.side === undefined && verb.bothSides === 'one line',
    tellsSide: place.isInPair === true,
    fresh: new Set(
      thing && fresh && fresh.only === undefined && !renews(verb, thing) ? [...readied, thing] : readied,
    ),
    ...(boxes.without ? { without: boxes.without } : {}),
    since: sinceRow(walk, statement),
    poured: poured.said,
  });
  const remark = isFirst && line.prose ? written(print, place.scope.file.path, line.prose.text) : [];
  const demands = under ? [...under.rejects, ...under.expects] : [];
  for (const object of objects)
    for (const end of ENDS) if (object.thing?.marks.includes(`${end}-axle`)) print.uses.ends.add(end);
  for (const object of objects) if (object.thing) walk.done.set(`${verb.word} ${object.thing.name}`, at);
  if (verb.on.limit || boxes.beside.some(({ kind }) => kind === 'inspection')) {
    for (const object of objects)
      if (object.thing) walk.asked.set(object.thing.name, { ...at, limits: boxes.limits });
  }
  out.push({
    kind: 'row',
    id: at.row,
    number: at.number,
    ...leading,
    body: byHand.length > 0 ? [...unstopped(said), ...byHand, text('.')] : said,
    notes: [
      ...(remark.length > 0 ? [remark] : []),
      ...demands,
      ...freshNotes,
      ...boxes.notes,
      ...poured.notes,
      ...(under?.notes ?? []),
    ],
    reasons: under?.reasons ?? [],
    beside: [...boxes.beside, ...clocks, ...(under?.beside ?? [])],
    marks: boxes.marks,
    ...(boxes.order ? { order: boxes.order } : {}),
    rail: railNow(walk),
    changes: changesSince(walk, before),
    ...forSome(print, place),
    ...(verb.later ? { isLater: true } : {}),
    ...located(print, place, line),
  });
  return at;
}

/** Takes a full stop away, so that something can follow. */
function unstopped(prose: Prose): Prose {
  const end = prose.at(-1);
  return end?.kind === 'text' && end.text.endsWith('.')
    ? [...prose.slice(0, -1), text(end.text.slice(0, -1))]
    : prose;
}

function moveTo(walk: Walk, side: SidePrint, act: Act | undefined, objects: readonly BoundItem[]): void {
  walk.lead = side;
  if (!act) return;
  const all = act.statement?.objects.length ?? 0;
  if (objects.length === all) side.trace.goTo(act, undefined);
  for (const { thing } of objects) if (thing) side.trace.goTo(act, thing);
}

/** A line that could not be read stands as it was written, so that nothing is lost from the print. */
export function unreadRow(walk: Walk, line: Line, place: Place, out: Out): RowAt {
  const at = nextRow(walk);
  const code = place.scope.file.tree.text.slice(line.code.start, line.code.end);
  out.push({
    kind: 'row',
    id: at.row,
    number: at.number,
    body: stopped([text(code)]),
    notes: line.prose ? [written(walk.print, place.scope.file.path, line.prose.text)] : [],
    reasons: [],
    beside: [],
    marks: [],
    rail: railNow(walk),
    changes: [],
    ...located(walk.print, place, line),
  });
  return at;
}
