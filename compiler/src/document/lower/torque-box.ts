// The box of a torque: head, count, figures in stages, what must hold; with a small head to mark for each fastener.
import {
  type BoundStatement,
  isEachSide,
  phrase,
  phraseText,
  type Thing,
  tighteningCount,
} from '@baywright/language';
import type { Marks, TorqueStage } from '../beside.js';
import { type Prose, text } from '../inline.js';
import type { Boxes } from './boxes.js';
import { dialReasons, dialsAt, settingOf } from './dial.js';
import { headOf, orderOf } from './heads.js';
import { capitalFirst, onSide, sideSuffix } from './names.js';
import { type Place, type Print, sourceOf } from './print.js';
import { titleOf } from './texts.js';
import { type TorqueHere, torqueConditions, torquesAt } from './torques.js';
import type { RowAt } from './uses.js';

/** More heads than this are not drawn one by one. */
const MOST_MARKS = 24;

export function torqueBoxes(
  print: Print,
  statement: BoundStatement,
  thing: Thing,
  place: Place,
  at: RowAt,
  stagesDone: number,
): Boxes {
  const { language, uses } = print;
  const head = headOf(print, thing);
  const order = orderOf(print, thing, statement);
  const count = tighteningCount(thing);
  const dials = dialsAt(print, thing, statement, place);
  const conditions = [
    ...torqueConditions(print, thing, statement, order?.written),
    ...dials.flatMap((dial) => dialReasons(print, dial)),
  ];
  const here = together(
    torquesAt(print, thing, statement, place, stagesDone).map((one) => ({
      ...one,
      stages: one.stages.map((stage, i) => ({ ...stage, ...settingOf(print, dials, one.nm[i]) })),
    })),
  );
  const tool = statement.named('with').find((item) => item.thing?.kind === 'tool')?.thing;
  const source = sourceOf(print, place.scope.file.path, statement.line.start);
  const isRecheck = statement.verb.later === true;
  const isEach = isEachSide(thing);
  // A return visit is one line for all sides.
  const all = isRecheck && isEach && !place.side ? count * print.sides.length : count;
  const title = capitalFirst(titleOf(print, thing));
  const named = (joint: string): string =>
    isRecheck ? phraseText('recheck-of', language, { object: joint }) : joint;
  for (const { stages, nm, pers, variant } of here) {
    for (const per of pers) uses.sources.add(per);
    if (head) uses.heads.push({ head, thing, nm: Math.max(0, ...nm.map((value) => value ?? 0)) });
    uses.torques.push({
      ...at,
      thing,
      joint: named(`${title}${isEach ? sideSuffix(print, place) : ''}`),
      ...(isEach ? onSide(print, place, named(title)) : {}),
      head,
      count: all,
      stages,
      nm,
      pers,
      variant,
      how: conditions.flatMap((words, i) => (i === 0 ? words : [text('; '), ...words])),
      order: order?.diagram,
      tool,
      source,
    });
  }
  const [most] = [...here].sort((a, b) => b.stages.length - a.stages.length);
  const stages = most?.isByVariant ? [] : (most?.stages ?? []);
  return {
    limits: [],
    beside: here.map(({ stages: own, variant }) => ({
      kind: 'torque',
      ...(head ? { head } : {}),
      count: all,
      stages: own.map((stage, i) => (i === 0 ? stageFor(variant, stage) : stage)),
      conditions,
    })),
    marks: isRecheck ? [] : marksOf(print, thing, stages, head?.shape ?? 'round'),
    notes: notesOfSources(
      here.flatMap(({ pers }) => pers),
      language,
    ),
    ...(order && !isRecheck ? { order: order.diagram } : {}),
    without: new Set(['bare', 'order', 'stage', 'per']),
  };
}

/** With the vehicles it is for over the figure: `Engine diesel, first`. A wrong torque is nearer than small print. */
export function stageFor(variant: string | undefined, stage: TorqueStage): TorqueStage {
  if (variant === undefined) return stage;
  const label = capitalFirst(variant);
  return { ...stage, label: stage.label === undefined ? label : `${label}, ${stage.label}` };
}

function marksOf(print: Print, thing: Thing, stages: readonly TorqueStage[], shape: Marks['shape']): Marks[] {
  const count = tighteningCount(thing);
  if (count > MOST_MARKS || (count === 1 && stages.length < 2)) return [];
  if (stages.length < 2) return [{ label: text(phrase('tick-each', print.language)), count, shape }];
  return stages.map((stage) => ({ label: text(capitalFirst(stage.label ?? '')), count, shape }));
}

interface Together extends Pick<TorqueHere, 'stages' | 'nm' | 'variant'> {
  readonly pers: readonly string[];
  /** The stages are one figure for each combination, not one turn after the other. */
  readonly isByVariant?: true;
}

/** Single figures that differ by vehicle stand in one box, each with the vehicle it is for. */
function together(here: readonly TorqueHere[]): Together[] {
  const apart = here.map(({ per, ...rest }) => ({ ...rest, pers: per === undefined ? [] : [per] }));
  if (here.length < 2 || here.some(({ stages, variant }) => stages.length !== 1 || variant === undefined))
    return apart;
  return [
    {
      stages: here.flatMap(({ stages, variant }) =>
        stages.map((stage) => ({ ...stage, label: variant ?? '' })),
      ),
      nm: here.flatMap(({ nm }) => nm),
      variant: undefined,
      pers: apart.flatMap(({ pers }) => pers),
      isByVariant: true,
    },
  ];
}

export function notesOfSources(pers: readonly (string | undefined)[], language: Print['language']): Prose[] {
  const names = [...new Set(pers.filter((per) => per !== undefined && per !== '?'))];
  return names.length === 0
    ? []
    : [[text(capitalFirst(phraseText('per-source', language, { source: names.join(', ') })))]];
}
