// Lasting bans on the rows where they hold: said where they begin and end, and in the running bar between.
import { type BanInForce, bansInForce, NEVER, phraseText } from '@baywright/language';
import type { Beside } from '../beside.js';
import { type Block, type BlockOf, type Rail, walkBlocks } from '../blocks.js';
import type { Ban } from '../document.js';
import { type Prose, text } from '../inline.js';
import { clockProse, type Running } from './clocks.js';
import { lineProse } from './line-words.js';
import { translated } from './print.js';
import { stopped } from './sentences.js';
import type { RowAt } from './uses.js';
import type { Walk } from './walk.js';

interface Span {
  readonly id: string;
  readonly from: RowAt;
  /** Missing when it holds to the end. */
  readonly to: RowAt | undefined;
  /** What holds and until when, where it begins and in the running bar. */
  readonly told: Prose;
  /** What held, where it ends. */
  readonly over: Prose;
  /** It is over when `to` begins, not when it is done: that row is what was forbidden. */
  readonly isOverBefore: boolean;
}

/** The bans of the printed work, and the steps with the lines that open and close them. */
export function withBans(
  walk: Walk,
  steps: readonly BlockOf<'step'>[],
): { bans: Ban[]; steps: BlockOf<'step'>[] } {
  const spans = spansOf(walk);
  const lastRow = [...walk.acts.values()].at(-1)?.last;
  const bans = spans.flatMap(({ id, from, to, told }): Ban[] =>
    lastRow ? [{ id, text: told, fromRow: from.row, untilRow: (to ?? lastRow).row }] : [],
  );
  const clocks = new Map(walk.clocks.map((clock) => [clock.box, clock]));
  return { bans, steps: steps.map((step) => ({ ...step, items: inserted(step.items, spans, clocks) })) };
}

function spansOf(walk: Walk): readonly Span[] {
  const { print } = walk;
  if (!print.run) return [];
  const found = bansInForce(print.run).flatMap((ban, i): RuleSpan[] => {
    const from = walk.acts.get(ban.from.index)?.first;
    const to = ban.to ? walk.acts.get(ban.to.index)?.last : undefined;
    const isHere = print.job.universe.diagrams.and(ban.when, print.when) !== NEVER;
    return from && isHere && !isShort(from, to)
      ? [{ id: `ban-${i}`, from, to, told: toldOf(walk, ban), ban }]
      : [];
  });
  const rules = found.reduce<readonly RuleSpan[]>((spans, next) => joined(walk, spans, next), []);
  return [...rules.map((span) => ruleSpan(walk, span)), ...clockSpans(walk)];
}

interface RuleSpan extends Pick<Span, 'id' | 'from' | 'to'> {
  /** The rule in words. */
  readonly told: string;
  readonly ban: BanInForce;
}

function ruleSpan({ print }: Walk, { id, from, to, told }: RuleSpan): Span {
  const until = to ? [text(': '), ...lineProse('until-line', print.language, { line: to })] : [];
  return {
    id,
    from,
    to,
    told: [text(told), ...until, text('.')],
    over: [text(`${told}.`)],
    isOverBefore: false,
  };
}

/** Clocks run in the same bar: until when nothing may be filled, torqued or run. */
function clockSpans(walk: Walk): Span[] {
  const running = walk.clocks.filter(({ def, to }) => to !== undefined || def.word === 'run after');
  // The same clock of both sides, with one end, is one bar: the later start counts.
  const apart = running.filter((clock, i) => !running.slice(0, i).some((earlier) => isSame(earlier, clock)));
  return apart
    .map((first, i) => ({ first, last: running.findLast((other) => isSame(first, other)) ?? first, i }))
    .filter(({ last: { from, to } }) => !isShort(from, to))
    .map(({ first, last, i }) => ({
      id: `clock-${i}`,
      from: first.from,
      to: last.to,
      told: stopped(clockProse(walk.print, last, last.to)),
      over: stopped(clockProse(walk.print, last)),
      isOverBefore: last.def.sense === 'at least',
    }));
}

/** A joint is closed in any case, and whoever takes the vehicle over drives it. */
const holdsToEnd = ({ def }: Running): boolean => def.word === 'run after' || def.word === 'fit within';

const isSame = (a: Running, b: Running): boolean =>
  a.def === b.def && a.part === b.part && a.time === b.time && a.to?.row === b.to?.row;

/**
 * A rule that ends and begins again is one ban while nothing of what it forbids happens between: one bar to heed, not
 * two. So is one that holds for one side and, before that ends, for the other.
 */
function joined(walk: Walk, spans: readonly RuleSpan[], next: RuleSpan): readonly RuleSpan[] {
  const before = spans.find(
    (span) => span.told === next.told && (isOverlap(span, next) || !isDoneBetween(walk, span, next)),
  );
  if (!before) return [...spans, next];
  const isLater = before.to && next.to && isBefore(before.to, next.to);
  const to = !before.to || !next.to ? undefined : isLater ? next.to : before.to;
  return spans.map((span) => (span === before ? { ...before, to, ban: next.ban } : span));
}

const isOverlap = (span: RuleSpan, next: RuleSpan): boolean => !span.to || !isBefore(span.to, next.from);

/** Whether what the rule forbids is rightly done after one span and before the other. */
function isDoneBetween({ print }: Walk, { ban }: RuleSpan, next: RuleSpan): boolean {
  const { form } = ban.rule;
  const verbs = form.head === 'never' ? form.pattern.verbs.map(({ text: verb }) => verb) : [];
  const from = ban.to?.index ?? Number.POSITIVE_INFINITY;
  const acts = print.run?.machine.acts.slice(from + 1, next.ban.from.index) ?? [];
  return acts.some(({ statement }) => statement !== undefined && verbs.includes(statement.verb.word));
}

/** A ban that the next row lifts needs no bar: the row says what to do. */
function isShort(from: RowAt, to: RowAt | undefined): boolean {
  const [stepA, rowA] = from.number.split('.').map(Number);
  const [stepB, rowB] = to?.number.split('.').map(Number) ?? [];
  return stepA === stepB && (rowB ?? 0) - (rowA ?? 0) <= 1;
}

function isBefore(a: RowAt, b: RowAt): boolean {
  const [stepA = 0, rowA = 0] = a.number.split('.').map(Number);
  const [stepB = 0, rowB = 0] = b.number.split('.').map(Number);
  return stepA < stepB || (stepA === stepB && rowA < rowB);
}

/** The rule in its own words; what it bans where it has none. */
function toldOf({ print }: Walk, { rule, banned, while: state }: BanInForce): string {
  const { thing } = rule;
  if (thing.title !== thing.name) return translated(print, thing.file, thing.title).replace(/\.$/, '');
  return phraseText('never-while', print.language, { action: banned, state });
}

/** Puts the opening line before the row that begins a ban and the closing one where it is over. */
function inserted(
  items: readonly Block[],
  spans: readonly Span[],
  clocks: ReadonlyMap<string, Running>,
): Block[] {
  return items.flatMap((item): Block[] => {
    if ('items' in item) {
      // What only some vehicles or cases come to is closed before their branch: it is over for the others as well.
      const rows = new Set([...walkBlocks(item.items)].map((block) => ('id' in block ? block.id : '')));
      const over = spans.filter(({ to, isOverBefore }) => isOverBefore && to && rows.has(to.row));
      const inside = spans.map((span) => (over.includes(span) ? { ...span, to: undefined } : span));
      const rail = 'rail' in item ? item.rail : { off: 0, loose: 0 };
      return [...closing(over, rail), { ...item, items: inserted(item.items, inside, clocks) } as Block];
    }
    if (item.kind !== 'row') return [item];
    const { rail } = item;
    const closed = spans.filter(({ to }) => to?.row === item.id);
    const opening = spans
      .filter(({ from }) => from.row === item.id)
      .map(({ id, told }): Block => ({ kind: 'banner', ban: id, edge: 'start', body: told, rail }));
    return [
      ...closing(
        closed.filter(({ isOverBefore }) => isOverBefore),
        rail,
      ),
      ...opening,
      { ...item, beside: item.beside.flatMap((box) => withEnd(box, clocks)) },
      ...closing(
        closed.filter(({ isOverBefore }) => !isOverBefore),
        rail,
      ),
    ];
  });
}

/** A clock with its end. A wait before filling has no place in a job that fills nothing. */
function withEnd(box: Beside, clocks: ReadonlyMap<string, Running>): Beside[] {
  const clock = box.kind === 'clock' ? clocks.get(box.id) : undefined;
  if (box.kind !== 'clock' || !clock) return [box];
  if (!clock.to) return holdsToEnd(clock) ? [box] : [];
  return [box.sense === 'at most' ? { ...box, until: clock.to } : box];
}

const closing = (spans: readonly Span[], rail: Rail): Block[] =>
  spans.map(({ id, over }) => ({ kind: 'banner', ban: id, edge: 'end', body: over, rail }));
