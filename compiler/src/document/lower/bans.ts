// Lasting bans on the rows where they hold: said where they begin and end, and in the running bar between.
import { type BanInForce, bansInForce, phraseText } from '@baywright/language';
import type { Block, BlockOf } from '../blocks.js';
import type { Ban } from '../document.js';
import { type Prose, text } from '../inline.js';
import { translated } from './texts.js';
import type { RowAt } from './uses.js';
import type { Walk } from './walk.js';

interface Span {
  readonly id: string;
  readonly from: RowAt;
  /** Missing when it holds to the end. */
  readonly to: RowAt | undefined;
  readonly told: string;
}

/** The bans of the printed work, and the steps with the lines that open and close them. */
export function withBans(
  walk: Walk,
  steps: readonly BlockOf<'step'>[],
): { bans: Ban[]; steps: BlockOf<'step'>[] } {
  const spans = spansOf(walk);
  const lastRow = [...walk.acts.values()].at(-1)?.last;
  const bans = spans.flatMap(({ id, from, to, told }): Ban[] =>
    lastRow
      ? [{ id, text: untilProse(walk, told, to), fromRow: from.row, untilRow: (to ?? lastRow).row }]
      : [],
  );
  return { bans, steps: steps.map((step) => ({ ...step, items: inserted(walk, step.items, spans) })) };
}

function spansOf(walk: Walk): readonly Span[] {
  const { print } = walk;
  if (!print.run) return [];
  const found = bansInForce(print.run).flatMap((ban, i): RuleSpan[] => {
    const from = walk.acts.get(ban.from.index)?.first;
    const to = ban.to ? walk.acts.get(ban.to.index)?.last : undefined;
    const isHere = print.job.universe.diagrams.and(ban.when, print.when) !== 0;
    return from && isHere && !isShort(from, to)
      ? [{ id: `ban-${i}`, from, to, told: toldOf(walk, ban), ban }]
      : [];
  });
  return [
    ...found.reduce<readonly RuleSpan[]>((spans, next) => joined(walk, spans, next), []),
    ...clockSpans(walk),
  ];
}

/** Clocks run in the same bar: until when nothing may be filled, torqued or run. */
function clockSpans(walk: Walk): Span[] {
  return walk.clocks
    .filter(({ from, to }) => to !== undefined && !isShort(from, to))
    .map(({ told, from, to }, i) => ({ id: `clock-${i}`, from, to, told }));
}

interface RuleSpan extends Span {
  readonly ban: BanInForce;
}

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

const isOverlap = (span: Span, next: Span): boolean => !span.to || !isBefore(span.to, next.from);

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

function untilProse({ print }: Walk, told: string, to: RowAt | undefined): Prose {
  if (!to) return [text(`${told}.`)];
  const [before = '', after = ''] = phraseText('until-line', print.language, { line: '\u0000' }).split(
    '\u0000',
  );
  return [text(`${told}: ${before}`), { kind: 'line', text: to.number, row: to.row }, text(`${after}.`)];
}

/** Puts the opening line before the row that begins a ban and the closing one behind the row that ends it. */
function inserted(walk: Walk, items: readonly Block[], spans: readonly Span[]): Block[] {
  return items.flatMap((item): Block[] => {
    const inside = 'items' in item ? { ...item, items: inserted(walk, item.items, spans) } : item;
    if (item.kind !== 'row') return [inside as Block];
    const opens = spans.filter(({ from }) => from.row === item.id);
    const closes = spans.filter(({ to }) => to?.row === item.id);
    return [
      ...opens.map(
        ({ id, told, to }): Block => ({
          kind: 'banner',
          ban: id,
          edge: 'start',
          body: untilProse(walk, told, to),
          rail: item.rail,
        }),
      ),
      item,
      ...closes.map(
        ({ id, told }): Block => ({
          kind: 'banner',
          ban: id,
          edge: 'end',
          body: [text(`${told}.`)],
          rail: item.rail,
        }),
      ),
    ];
  });
}
