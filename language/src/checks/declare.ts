// The fix that declares a name: its kind is read from its uses, its entry goes into the section of that kind, and the
// section is made when the file has none.
import type { Fix } from '../diagnostics/define.js';
import type { FileModel } from '../names/model.js';
import type { Span, TextEdit } from '../text/span.js';
import { ENTRY_CLAUSES, STEP_CLAUSES } from '../vocabulary/clauses.js';
import type { ThingKind } from '../vocabulary/kinds.js';
import { SECTIONS } from '../vocabulary/sections.js';
import { lineEnd, lineStart } from './own-lines.js';

export interface Undeclared {
  readonly name: string;
  /** Where it is named. */
  readonly places: readonly Span[];
  readonly kind: ThingKind;
  /** For a condition: the values it is set to. */
  readonly values: readonly string[];
}

/** Kinds in the order of likelihood where the uses leave more than one. */
const LIKELY: readonly ThingKind[] = [
  'part',
  'fastener',
  'connection',
  'fluid',
  'limit',
  'condition',
  'tool',
  'supply',
  'place',
  'temporary',
  'circuit',
  'adjustment',
  'message',
  'source',
];

/** What English shop names tell of a kind; common practice. A name that tells nothing goes by `LIKELY`. */
const TELLING: readonly (readonly [RegExp, ThingKind])[] = [
  [/(^|-)(drain|fill|filler|level|oil|magnetic)-plugs?$/, 'fastener'],
  [/(^|-)(bolts?|nuts?|screws?|studs?|clips?|circlip|pins?|clamps?|unions?|rivets?)$/, 'fastener'],
  [/(^|-)(hoses?|pipes?|lines?|leads?|plugs?|connectors?|joints?|links?|wiring)$/, 'connection'],
  [/(^|-)(cleaner|degreaser|sealant|grease|solvent|compound|threadlocker|paste)$/, 'supply'],
  [/(^|-)(rag|pan|tray|bottle|cover-sheet|sheet|cap)$/, 'temporary'],
  [/(^|-)(oil|coolant|fluid|fuel|refrigerant)$/, 'fluid'],
  [/(^|-)circuits?$/, 'circuit'],
  [/(^|-)(faces?|frame|marks?|points?|groove|rim|floor|ground|ramp|bench|dipstick|sight-glass)$/, 'place'],
];

/**
 * The kind that fits all the uses of a name: each use gives the kinds that fit it, none when any does. `meant` is the
 * kind that the verbs and clauses around it point to. Where no kind fits them all, the one that fits most.
 */
export function kindFromUses(
  name: string,
  uses: readonly (readonly ThingKind[])[],
  meant?: ThingKind,
): ThingKind {
  const fitting = (kind: ThingKind): number =>
    uses.filter((kinds) => kinds.length === 0 || kinds.includes(kind)).length;
  const fits = (kind: ThingKind): boolean => fitting(kind) === uses.length;
  const told = TELLING.find(([pattern]) => pattern.test(name))?.[1];
  if (told && fits(told)) return told;
  if (meant && fits(meant)) return meant;
  const most = Math.max(0, ...LIKELY.map(fitting));
  const best = most === 0 ? [] : LIKELY.filter((kind) => fitting(kind) === most);
  return best.find((kind) => kind === told) ?? best[0] ?? 'part';
}

/** One fix that declares all of the names. */
export function declareFix(
  file: FileModel,
  names: readonly Undeclared[],
  title: string,
  preferred: boolean,
): Fix {
  const bySection = new Map<string, Undeclared[]>();
  for (const name of names) {
    const word = sectionOf(name.kind);
    bySection.set(word, [...(bySection.get(word) ?? []), name]);
  }
  const edits = [...bySection].map(([word, list]) => insertEntries(file, word, list));
  const renamed = names.flatMap(({ name, places }) =>
    entryName(name) === name
      ? []
      : places.map(({ start, end }) => ({ file: file.path, span: { start, end }, text: entryName(name) })),
  );
  // Sections that are new go to the same place: one edit for them all.
  const merged: TextEdit[] = [];
  for (const edit of edits) {
    const same = merged.findIndex((other) => other.span.start === edit.span.start);
    const other = merged[same];
    if (other) merged[same] = { ...other, text: other.text + edit.text };
    else merged.push(edit);
  }
  merged.push(...renamed);
  return preferred ? { title, edits: merged, preferred: true } : { title, edits: merged };
}

/** Words that open a clause, which no entry can go by. */
const RESERVED = new Set([...ENTRY_CLAUSES, ...STEP_CLAUSES].map(({ word }) => word));

/** The name of the entry: `shop-grease` for what a line calls `grease`. */
export const entryName = (name: string): string => (RESERVED.has(name) ? `shop-${name}` : name);

function sectionOf(kind: ThingKind): string {
  return SECTIONS.find((section) => section.declares === kind)?.word ?? 'parts';
}

function insertEntries(file: FileModel, word: string, names: readonly Undeclared[]): TextEdit {
  const { text } = file.tree;
  const entries = names
    .map(
      ({ name, values }) =>
        `  ${entryName(name)}: ${titleFrom(name)}\n${values.length > 0 ? `    ${values.join(', ')}\n` : ''}`,
    )
    .join('');
  const section = [...file.lines].reverse().find((line) => line.kind === 'section' && line.word === word);
  if (section) {
    const end = lineEnd(text, (section.children.at(-1) ?? section).end);
    const gap = text.slice(0, end).endsWith('\n') ? '' : '\n';
    return { file: file.path, span: { start: end, end }, text: gap + entries };
  }
  const work = file.work[0];
  const at = work ? lineStart(text, work.start) : text.length;
  const before = work || text.endsWith('\n\n') || text === '' ? '' : text.endsWith('\n') ? '\n' : '\n\n';
  return {
    file: file.path,
    span: { start: at, end: at },
    text: `${before}${word}\n${entries}${work ? '\n' : ''}`,
  };
}

/** `Hub bolt` for `hub-bolt`. */
function titleFrom(name: string): string {
  const words = name.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
