// Where each outcome of a reading or an inspection leads: written into the boxes once all rows have their numbers, from
// what really follows. Nothing written means: stop and tell the shop lead.
import { type PhraseId, phrase } from '@baywright/language';
import type { Beside, BesideKinds } from '../beside.js';
import type { Block, BlockOf, Depends } from '../blocks.js';
import { type Prose, plain, text } from '../inline.js';
import { lineProse } from './line-words.js';
import type { Branch, Walk } from './walk.js';

/** The steps with the ways of their boxes. */
export const withWays = (walk: Walk, steps: readonly BlockOf<'step'>[]): BlockOf<'step'>[] =>
  steps.map((step) => ({ ...step, items: step.items.map((item) => wayed(walk, item)) }));

function wayed(walk: Walk, block: Block): Block {
  if (block.kind === 'row') return { ...block, beside: block.beside.map((box) => boxed(walk, block, box)) };
  return 'items' in block
    ? ({ ...block, items: block.items.map((item) => wayed(walk, item)) } as Block)
    : block;
}

function boxed(walk: Walk, row: BlockOf<'row'>, box: Beside): Beside {
  const branches = walk.branches.filter(({ on }) => on.row === row.id);
  if (box.kind === 'reading') return { ...box, ways: readingWays(walk, box, branches) };
  if (box.kind !== 'inspection') return box;
  const levels = branches.filter(({ test }) => test === 'below' || test === 'above');
  if (levels.length > 0) return { ...box, ...levelWays(walk, branches, levels) };
  return {
    ...box,
    good: way(walk, 'outcome-good', thenOf(walk, branches, ['good'], 'then-go-on')),
    bad: way(walk, 'outcome-rejected', thenOf(walk, branches, ['bad'], 'then-tell-lead')),
  };
}

/** A level is at its mark, below or above it. */
function levelWays(
  walk: Walk,
  all: readonly Branch[],
  levels: readonly Branch[],
): Pick<BesideKinds['inspection'], 'good' | 'bad'> {
  const off = levels.map((branch) =>
    way(
      walk,
      branch.test === 'below' ? 'outcome-low' : 'outcome-high',
      thenOf(walk, [branch], ['bad'], 'then-tell-lead'),
    ),
  );
  return {
    good: way(walk, 'outcome-level', thenOf(walk, all, ['good'], 'then-go-on')),
    bad: off.flatMap((words, i): Prose => (i === 0 ? words : [text('; '), ...words])),
  };
}

/** Below and above stand apart only where they lead to different lines. */
function readingWays(walk: Walk, box: BesideKinds['reading'], all: readonly Branch[]): Prose[] {
  const own = walk.limits.get(box.id);
  const branches = all.filter(({ limit }) => limit === undefined || limit === own);
  const within = way(walk, 'outcome-within', thenOf(walk, branches, ['good'], 'then-go-on'));
  const low = thenOf(walk, branches, ['low', 'bad'], 'then-tell-lead');
  const high = thenOf(walk, branches, ['high', 'bad'], 'then-tell-lead');
  const below = way(walk, 'outcome-below', low);
  const above = way(walk, 'outcome-above', high);
  if (box.low !== undefined && box.high === undefined) return [within, below];
  if (box.high !== undefined && box.low === undefined) return [within, above];
  if (plain(low) === plain(high)) return [within, way(walk, 'outcome-beyond', low)];
  return [within, below, above];
}

function thenOf(
  walk: Walk,
  branches: readonly Branch[],
  results: readonly Depends['result'][],
  otherwise: PhraseId,
): Prose {
  const { language } = walk.print;
  const found = results
    .map((result) => branches.find(({ on }) => on.result === result))
    .find((branch) => branch !== undefined);
  if (!found) return lineProse(otherwise, language, {});
  return found.to
    ? lineProse('then-go-to', language, { line: found.to })
    : lineProse('then-as-noted', language, {});
}

/** `below limit: go to 2.7` */
const way = ({ print: { language } }: Walk, outcome: PhraseId, then: Prose): Prose =>
  lineProse('outcome-then', language, { outcome: phrase(outcome, language), then });
