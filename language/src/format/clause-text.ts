// Writes clauses, items, guards and rules in their one form, as pieces that say how they join the piece before.
import type {
  Clause,
  EventPattern,
  Guard,
  Item,
  Name,
  Raw,
  RuleClause,
  StatePattern,
} from '../syntax/tree.js';
import { asWritten, measureText, numberText, specText } from './quantity-text.js';

/** A part of a line. `start` is where it was written, so that the writer's line breaks can stay. */
export interface Piece {
  readonly text: string;
  readonly start: number;
  /** What parts it from the piece before. */
  readonly join: ', ' | ' ';
}

/** Clauses that need no comma before them after names. */
const PREPOSITIONS = new Set(['with', 'at', 'to', 'from', 'on', 'in', 'into', 'by', 'until level at']);
/** What a fastener is, behind its number and thread, comes in this order on its line: `4 of M12x1.5, class 10.9, hex 18 mm`. */
export const FASTENER_IDENTITY: readonly string[] = [
  'class',
  'grade',
  'length',
  'grip',
  'hex',
  'square',
  'hexalobular',
  'twelve-point',
  'slot',
  'cross-slot',
];
const IDENTITY = ['of', ...FASTENER_IDENTITY];

/** The items of a statement or clause: one piece each. */
export function itemPieces(text: string, items: readonly Item[]): Piece[] {
  return items.map((item, i) => ({
    text: itemText(text, item),
    start: item.start,
    join: i === 0 ? ' ' : ', ',
  }));
}

/** Clauses with the guard last. `after`: what stands before the first: nothing, a verb alone, names, or other words. */
export function clausePieces(
  text: string,
  clauses: readonly Clause[],
  guard: Guard | undefined,
  after: 'nothing' | 'verb' | 'names' | 'words',
): Piece[] {
  const pieces: Piece[] = [];
  let before: typeof after | 'of' = after;
  const ordered = clauses.some(({ word }) => word === 'of') ? inIdentityOrder(clauses) : clauses;
  for (const clause of ordered) {
    const isClose =
      before === 'nothing' ||
      before === 'verb' ||
      before === 'of' ||
      (before === 'names' && clause.spec === undefined && PREPOSITIONS.has(clause.word));
    const [first, ...more] = clauseParts(text, clause);
    if (first === undefined) continue;
    pieces.push({ text: first.text, start: first.start, join: isClose ? ' ' : ', ' }, ...more);
    // In an entry only the faces after its sealant go without a comma; `? of hex 13 mm` has none after its count.
    const listsNames = clause.items.length > 0 && (after !== 'nothing' || clause.word === 'sealed with');
    before = clause.word === 'of' && clause.raw === undefined ? 'of' : listsNames ? 'names' : 'words';
  }
  if (guard !== undefined)
    pieces.push({
      text: guardText(text, guard),
      start: guard.start,
      join: pieces.length === 0 && after === 'nothing' ? ' ' : ', ',
    });
  return pieces;
}

/** A guard in its one form: `when axle heavy`. */
export function guardText(text: string, guard: Guard): string {
  return `${guard.only ? 'only when' : 'when'} ${guardTermsText(text, guard)}`;
}

export function guardTermsText(text: string, guard: Guard): string {
  return guard.terms
    .map((term) => {
      const values =
        term.years === undefined
          ? term.values.map((value) => value.text).join(' or ')
          : asWritten(text, { start: term.option.end, end: term.end }).trim();
      return `${term.option.text} ${values}`;
    })
    .join(' and ');
}

/** Raw text; a source is always quoted. */
export function rawText(text: string, raw: Raw, quote = false): string {
  if (raw.quoted || raw.hole) return text.slice(raw.start, raw.end);
  const written = asWritten(text, raw);
  return quote && !written.includes('"') ? `"${written}"` : written;
}

export function ruleText(text: string, clause: RuleClause): string {
  switch (clause.word) {
    case 'require':
      if (clause.wait !== undefined) return `require wait ${measureText(text, clause.wait)}`;
      return `require ${clause.message ?? (clause.pattern === undefined ? '' : patternText(text, clause.pattern))}`;
    case 'while':
      return `while ${clause.state === undefined ? '' : stateText(text, clause.state)}`;
    case 'needs':
      return `needs ${clause.clause === undefined ? '' : joined(clauseParts(text, clause.clause))}`;
    case 'at most once':
      return 'at most once';
    default:
      return `${clause.word} ${clause.until ?? (clause.pattern === undefined ? '' : patternText(text, clause.pattern))}`;
  }
}

/** Pieces on one line. */
export function joined(pieces: readonly Piece[]): string {
  return pieces.map(({ text, join }, i) => (i === 0 ? text : join + text)).join('');
}

function clauseParts(text: string, clause: Clause): Piece[] {
  const { start, word, items, spec, raw, words, count, event } = clause;
  const piece = (own: string): Piece[] => [{ text: own, start, join: ', ' }];
  if (word === 'bare' || word === 'at least' || word === 'at most')
    return piece(spec === undefined ? word : specText(text, spec));
  if (count !== undefined)
    return piece(`${numberText(text, count)} of${raw === undefined ? '' : ` ${rawText(text, raw)}`}`);
  if (raw !== undefined) return piece(`${word} ${rawText(text, raw, word === 'per')}`);
  if (spec !== undefined) return piece(`${word} ${specText(text, spec)}`);
  if (event !== undefined) return piece(`${word} ${patternText(text, event)}`);
  const listed = items.length > 0 ? itemPieces(text, items) : wordPieces(words, word === 'option');
  const [first, ...more] = listed;
  return first === undefined ? piece(word) : [{ text: `${word} ${first.text}`, start, join: ', ' }, ...more];
}

/** `axle light, heavy` when the first word is an option's name. */
function wordPieces(words: readonly Name[], isOption: boolean): Piece[] {
  return words.map(({ text, start }, i) => ({ text, start, join: isOption && i === 1 ? ' ' : ', ' }));
}

function itemText(text: string, { count, name, value, alternatives }: Item): string {
  const number = count === undefined ? '' : `${numberText(text, count)} of `;
  const others = alternatives.map((other) => ` or ${other.text}`).join('');
  return number + name.text + others + (value === undefined ? '' : ` ${value.text}`);
}

function patternText(text: string, { verbs, target, value, clauses }: EventPattern): string {
  const parts = [verbs.map((verb) => verb.text).join(' or ')];
  if (target !== undefined) parts.push(targetText(text, target));
  if (value !== undefined) parts.push(value.text);
  for (const clause of clauses) parts.push(joined(clauseParts(text, clause)));
  return parts.join(' ');
}

function stateText(text: string, { target, not, state }: StatePattern): string {
  return `${targetText(text, target)}${not ? ' not' : ''} ${state.text}`;
}

function targetText(text: string, target: NonNullable<EventPattern['target']>): string {
  if (target.form === 'names') return target.names.map((name) => name.text).join(' or ');
  if (target.form !== 'any') return target.form;
  const { kind, mark, over } = target;
  return `any ${kind.text}${mark === undefined ? '' : ` marked ${mark.text}`}${over === undefined ? '' : ` over ${measureText(text, over)}`}`;
}

function inIdentityOrder(clauses: readonly Clause[]): readonly Clause[] {
  const rank = ({ word }: Clause) => {
    const at = IDENTITY.indexOf(word);
    return at < 0 ? IDENTITY.length : at;
  };
  return [...clauses].sort((a, b) => rank(a) - rank(b));
}
