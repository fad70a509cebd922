/**
 * Reads the unit written after a number: the longest spelling in the table, straight at the place. It runs on
 * every number of every file, so it walks a tree of characters once and never backtracks.
 */
import { once } from '../text/once.js';
import { ambiguousSpellings, type UnitReading } from './ambiguous.js';
import { type QuantityKind, quantityKinds } from './dimension.js';
import type { Unit } from './unit.js';
import { units } from './unit-table.js';

/** A unit found in a text: one unit, or several readings that the writer must choose from. */
export type ReadUnit = { readonly start: number; readonly end: number; readonly spelling: string } & (
  | { readonly unit: Unit; readonly readings?: never }
  | { readonly unit?: never; readonly readings: readonly UnitReading[] }
);

/**
 * Reads a unit at `offset`, spaces before it skipped. Undefined when no spelling fits, or when the longest one
 * runs into a letter, a digit, `-`, `·`, `/` or a power. An inch or foot mark is read only without a space, for
 * `4 "name"` is a number and a string.
 */
export function readUnit(text: string, offset: number): ReadUnit | undefined {
  let start = offset;
  while (isSpace(text.charCodeAt(start))) start += 1;
  let node: TreeNode | undefined = tree;
  let at = start;
  let found: ReadUnit | undefined;
  while (at < text.length) {
    const code = fold(text.charCodeAt(at));
    node = node.next.get(code);
    if (node === undefined) break;
    at += 1;
    if (code === SPACE) while (isSpace(text.charCodeAt(at))) at += 1;
    if (node.spellings !== undefined && endsHere(text, at)) {
      const spelling = text.slice(start, at);
      const meant = node.spellings.get(spelling) ?? node.spellings.get(foldText(spelling)) ?? inAnyCase(node);
      if (meant !== undefined && (start === offset || !isMark(spelling))) {
        found = { start, end: at, spelling, ...meant };
      }
    }
  }
  return found;
}

/** How a unit is written so that it has one meaning: its symbol, or `oz av` where the symbol has several. */
export const definiteSpelling = once(
  (unit: Unit): string =>
    [unit.symbol, ...unit.spellings].find((spelling) => readUnit(spelling, 0)?.unit === unit) ?? unit.symbol,
);

/** What a spelling may mean: a unit, or readings, or (both missing or empty) nothing known. */
export interface UnitChoice {
  readonly unit?: Unit | undefined;
  readonly readings?: readonly UnitReading[] | undefined;
}

/**
 * The unit meant where one of `expected` kinds is wanted: the only reading of such a kind, else the usual one
 * when they are all of one kind; undefined when the writer must be asked. A plain unit is returned whatever is
 * expected: that check is the caller's.
 */
export function resolveUnit(choice: UnitChoice, expected?: readonly QuantityKind[]): Unit | undefined {
  if (choice.unit !== undefined) return choice.unit;
  const fitting = readingsFor(choice, expected);
  const [first] = fitting;
  if (fitting.length === 1) return first?.unit;
  const isOneKind = fitting.every(({ unit }) => unit.kind === first?.unit.kind);
  return isOneKind ? fitting.find(({ isUsual }) => isUsual === true)?.unit : undefined;
}

/** The readings of a spelling that fit the expected kinds; all of them when none fits or nothing is expected. */
export function readingsFor(choice: UnitChoice, expected?: readonly QuantityKind[]): readonly UnitReading[] {
  const { unit, readings = [] } = choice;
  const all = unit === undefined ? readings : [{ unit, meaning: quantityKinds[unit.kind].phrase }];
  if (expected === undefined) return all;
  const fitting = all.filter((reading) => expected.includes(reading.unit.kind));
  return fitting.length > 0 ? fitting : all;
}

/** Whether a character is one of the blanks that may part a number and its unit. */
export function isSpace(code: number): boolean {
  return code === SPACE || code === 0x09 || code === 0xa0 || code === 0x2009 || code === 0x202f;
}

type Meant = { readonly unit: Unit } | { readonly readings: readonly UnitReading[] };

interface TreeNode {
  readonly next: Map<number, TreeNode>;
  /** What the spellings that end here mean, by their exact capitals. */
  spellings?: Map<string, Meant>;
  /** What they mean in any other capitals, once somebody has asked. */
  anyCase?: Meant | 'nothing';
}

const SPACE = 0x20;
const COMMA = 0x2c;
/** Characters that make a longer word, product, quotient or power of what stands before them. */
const goesOn = new Set([...'-·⋅*/^²³_'].map((character) => character.charCodeAt(0)));

/** Characters that are typed for one another. */
const alike = new Map<string, string>([
  ...each('·', '\u22c5\u2219\u2022*×'),
  ...each('-', '\u2010\u2011\u2013\u2212'),
  ...each('µ', '\u03bc'),
  ...each('\u03a9', '\u2126'),
  ...each('\u0394', '\u2206'),
  ...each('°', 'º\u02da'),
  ...each("'", '\u2018\u2019'),
  ...each('"', '\u201c\u201d\u2033'),
]);
const alikeCodes = new Map([...alike].map(([from, to]) => [from.charCodeAt(0), to.charCodeAt(0)]));

const tree = buildTree();

function each(to: string, from: string): [string, string][] {
  return [...from].map((character) => [character, to]);
}

/** Folds a character: alike ones to one, capitals to small, any blank to a space. */
function fold(code: number): number {
  if (code < 0x80)
    return code >= 0x41 && code <= 0x5a ? code + 0x20 : code === 0x2a ? 0xb7 : code === 0x09 ? SPACE : code;
  if (isSpace(code)) return SPACE;
  return alikeCodes.get(code) ?? code;
}

/** A spelling with alike characters folded and blanks made one space, capitals kept. */
function foldText(spelling: string): string {
  if (isPlain(spelling)) return spelling;
  let out = '';
  for (const character of spelling) {
    const folded = isSpace(character.charCodeAt(0)) ? ' ' : (alike.get(character) ?? character);
    if (folded !== ' ' || !out.endsWith(' ')) out += folded;
  }
  return out;
}

/** Nothing to fold: ASCII with no `*`, tab or run of spaces. */
function isPlain(spelling: string): boolean {
  for (let at = 0; at < spelling.length; at += 1) {
    const code = spelling.charCodeAt(at);
    if (code >= 0x80 || code === 0x2a || code === 0x09) return false;
    if (code === SPACE && spelling.charCodeAt(at + 1) === SPACE) return false;
  }
  return true;
}

/** Quote marks and `#` count as units only straight after their number. */
function isMark(spelling: string): boolean {
  return '"\'″′”’#'.includes(spelling.charAt(0));
}

function endsHere(text: string, at: number): boolean {
  if (at >= text.length) return true;
  const next = text.charCodeAt(at);
  if (next === SPACE || next === COMMA) return true;
  const last = text.charCodeAt(at - 1);
  if (goesOn.has(next) || isLetter(next)) return false;
  // 1°30′ and 5'6": a mark may touch the next number, a word may not.
  return !isDigit(next) || !(isLetter(last) || isDigit(last));
}

function isDigit(code: number): boolean {
  return code >= 0x30 && code <= 0x39;
}

function isLetter(code: number): boolean {
  if (code < 0x80) return (code | SPACE) >= 0x61 && (code | SPACE) <= 0x7a;
  return /\p{L}/u.test(String.fromCharCode(code));
}

function buildTree(): TreeNode {
  const root: TreeNode = { next: new Map() };
  for (const unit of units) for (const spelling of unit.spellings) add(root, spelling, { unit });
  for (const row of ambiguousSpellings) {
    for (const spelling of row.spellings) add(root, spelling, { readings: row.readings });
  }
  return root;
}

function add(root: TreeNode, spelling: string, meant: Meant): void {
  let node = root;
  const folded = foldText(spelling);
  for (let at = 0; at < folded.length; at += 1) {
    const code = fold(folded.charCodeAt(at));
    let next = node.next.get(code);
    if (next === undefined) {
      next = { next: new Map() };
      node.next.set(code, next);
    }
    node = next;
  }
  node.spellings ??= new Map();
  node.spellings.set(folded, meant);
}

/**
 * What a spelling means in capitals that no row has: the one meaning when all rows agree; else every unit they
 * name, for the writer to choose from. Of a single letter the capitals decide, so it means nothing.
 */
function inAnyCase(node: TreeNode): Meant | undefined {
  node.anyCase ??= agreed(node);
  return node.anyCase === 'nothing' ? undefined : node.anyCase;
}

function agreed({ spellings = new Map<string, Meant>() }: TreeNode): Meant | 'nothing' {
  if ([...spellings.keys()].some((spelling) => spelling.length === 1)) return 'nothing';
  const readings = [...spellings.values()].flatMap((meant) =>
    'unit' in meant
      ? [
          {
            unit: meant.unit,
            meaning: `${meant.unit.names.en.other}, ${quantityKinds[meant.unit.kind].phrase}`,
          },
        ]
      : meant.readings,
  );
  const distinct = readings.filter(
    (reading, index) => readings.findIndex(({ unit }) => unit === reading.unit) === index,
  );
  const [only] = distinct;
  return distinct.length === 1 && only !== undefined ? { unit: only.unit } : { readings: distinct };
}
