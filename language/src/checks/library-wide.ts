// R201 to R203: what only the whole library can tell: entries that nothing uses, rules that bind to nothing, things
// declared alike in two files. Each file is read once into a part, plain data that can be kept; the parts are then
// looked at together, so that a change in one file does not ask for all others to be read again.
import { type Finding, finding } from '../diagnostics/define.js';
import { entryUnused } from '../diagnostics/r201-entry-unused.js';
import { ruleBindsNothing } from '../diagnostics/r202-rule-binds-nothing.js';
import { declaredAlike } from '../diagnostics/r203-declared-alike.js';
import type { Library } from '../library.js';
import { everyLine } from '../names/job.js';
import { clausesOf, type FileModel, hasClause, nameSpan, type Thing } from '../names/model.js';
import { ANY_KIND } from '../rules/match.js';
import { type Settings, severityOf } from '../settings/index.js';
import type { EventPattern, Line, RuleLine } from '../syntax/tree.js';
import type { Span } from '../text/span.js';
import { BUILT_IN_NAMES } from '../vocabulary/kinds.js';
import { acceptedIn } from './accept.js';

/** What the others must know of a file. It depends on the file's text alone. */
export interface LibraryPart {
  readonly path: string;
  readonly kind: FileModel['kind'];
  /** Every word of the code and of references, each once; the names that entries declare are not among them. */
  readonly words: readonly string[];
  readonly things: readonly PartThing[];
  readonly rules: readonly PartRule[];
  /** Codes and names that the file accepts. */
  readonly accepted: readonly string[];
}

interface PartThing {
  readonly name: string;
  readonly kind: string;
  readonly at: Span | undefined;
  readonly marks: readonly string[];
  /** Whether it counts as used without being named. */
  readonly isFree: boolean;
  readonly likenesses: readonly Likeness[];
  /** The clauses of a supply, for those of the same title. */
  readonly clauses: string;
}

interface Likeness {
  readonly key: string;
  readonly what: 'part number' | 'title and other figures';
}

interface PartRule {
  readonly name: string;
  readonly targets: readonly PartTarget[];
}

interface PartTarget {
  /** Names of which one must be declared; empty where it binds by mark. */
  readonly names: readonly string[];
  readonly kind: string;
  readonly mark: string;
  readonly at: Span;
}

/** Findings over the files named, with the house's severities. Without a procedure among them nothing counts as unused. */
export function libraryFindings(library: Library, paths: readonly string[]): Finding[] {
  const models = paths.map((path) => library.model(path)).filter((model) => model !== undefined);
  return findingsOfParts(models.map(partOf), library.settings);
}

/** The same from parts that were read before. */
export function findingsOfParts(parts: readonly LibraryPart[], settings: Settings): Finding[] {
  const accepted = new Map(parts.map((part) => [part.path, new Set(part.accepted)]));
  return [...unusedEntries(parts), ...idleRules(parts), ...alike(parts)]
    .map((found) => severityOf(found, settings))
    .filter((found) => found !== undefined)
    .filter(({ file, code, name }) => !accepted.get(file)?.has(code) && !accepted.get(file)?.has(name));
}

export function partOf(file: FileModel): LibraryPart {
  const words = new Set<string>();
  for (const line of everyLine(file.lines)) addWords(line, words);
  return {
    path: file.path,
    kind: file.kind,
    words: [...words],
    things: file.things.map(partThing),
    rules: file.things.filter(({ kind }) => kind === 'rule').map(partRule),
    accepted: acceptedIn(file).map(({ code }) => code),
  };
}

function partThing(thing: Thing): PartThing {
  const name = nameSpan(thing);
  return {
    name: thing.name,
    kind: thing.kind,
    at: name && { start: name.start, end: name.end },
    marks: thing.marks,
    // Rules hold without being named, and a torque wrench is chosen by its range.
    isFree: thing.kind === 'rule' || (thing.kind === 'tool' && hasClause(thing, 'torque')),
    likenesses: likenesses(thing),
    clauses: thing.kind === 'supply' ? clauseText(thing) : '',
  };
}

/** Every word of a line's code and of the references in its text, except the name that an entry declares. */
function addWords(line: Line, words: Set<string>): void {
  const own = line.kind === 'entry' ? line.name.start : -1;
  for (const { start, image } of line.tokens)
    if (start !== own) words.add(image.includes('"') ? image.replaceAll('"', '') : image);
  for (const { name } of line.prose?.references ?? []) words.add(name.text);
}

function partRule(rule: Thing): PartRule {
  const lines = [...everyLine(rule.line?.children ?? [])].filter((l): l is RuleLine => l.kind === 'rule');
  const targets = lines
    .flatMap((l) => l.clauses)
    .flatMap(targetsOf)
    .flatMap(partTarget);
  return { name: rule.name, targets };
}

type Target = NonNullable<EventPattern['target']>;

function targetsOf(clause: RuleLine['clauses'][number]): Target[] {
  const pattern = 'pattern' in clause ? clause.pattern?.target : undefined;
  const state = 'state' in clause ? clause.state?.target : undefined;
  return [pattern, state].filter((t) => t !== undefined);
}

function partTarget(target: Target): PartTarget[] {
  if (target.form === 'names') {
    const [first] = target.names;
    if (first === undefined) return [];
    const at = { start: first.start, end: first.end };
    return [{ names: target.names.map((n) => n.text), kind: '', mark: '', at }];
  }
  if (target.form !== 'any' || !target.mark) return [];
  const { kind, mark } = target;
  return [{ names: [], kind: kind.text, mark: mark.text, at: { start: mark.start, end: mark.end } }];
}

function unusedEntries(parts: readonly LibraryPart[]): Finding[] {
  if (!parts.some((part) => part.kind === 'procedure')) return [];
  const unused = new Set(
    parts.filter(({ kind }) => kind === 'catalogue').flatMap(({ things }) => things.map(({ name }) => name)),
  );
  for (const { words } of parts) for (const word of words) unused.delete(word);
  return parts
    .filter((part) => part.kind === 'catalogue')
    .flatMap(({ path, things }) =>
      things.flatMap(({ name, at, isFree }) =>
        isFree || at === undefined || !unused.has(name)
          ? []
          : [finding(entryUnused, { file: path, span: at }, { name })],
      ),
    );
}

/** One finding for each rule, at the first target that is nowhere. */
function idleRules(parts: readonly LibraryPart[]): Finding[] {
  if (!parts.some(({ rules }) => rules.length > 0)) return [];
  const things = parts.flatMap((part) => part.things);
  const names = new Set<string>([...things.map((t) => t.name), ...BUILT_IN_NAMES]);
  const marked = new Set(
    things.flatMap((t) => t.marks.flatMap((mark) => [`${t.kind} ${mark}`, `${ANY_KIND} ${mark}`])),
  );
  return parts.flatMap(({ path, rules }) =>
    rules.flatMap(({ name, targets }) => {
      const idle = targets.find((target) =>
        target.mark === ''
          ? !target.names.some((one) => names.has(one))
          : !marked.has(`${target.kind} ${target.mark}`),
      );
      if (idle === undefined) return [];
      const what =
        idle.mark === ''
          ? `no file declares \`${idle.names[0]}\``
          : `no ${idle.kind} is marked \`${idle.mark}\``;
      return [finding(ruleBindsNothing, { file: path, span: idle.at }, { rule: name, what })];
    }),
  );
}

/** One part number on two names; one supply in two files with different figures. */
function alike(parts: readonly LibraryPart[]): Finding[] {
  const first = new Map<string, { thing: PartThing; path: string }>();
  const found: Finding[] = [];
  for (const { path, things } of parts) {
    for (const thing of things) {
      const { name, at } = thing;
      for (const { key, what } of thing.likenesses) {
        const other = first.get(key);
        if (!other) first.set(key, { thing, path });
        else if (at && other.path !== path && differ(what, thing, other.thing)) {
          const there = other.thing.at;
          const related = there ? [{ file: other.path, span: there, message: 'declared here' }] : [];
          found.push(
            finding(
              declaredAlike,
              { file: path, span: at, related },
              { name, other: other.thing.name, file: other.path, what },
            ),
          );
          break;
        }
      }
    }
  }
  return found;
}

function likenesses(thing: Thing): Likeness[] {
  const numbers = clausesOf(thing, 'number').flatMap(({ clause }) =>
    clause.raw && !clause.raw.hole
      ? [{ key: `number ${clause.raw.text}`, what: 'part number' as const }]
      : [],
  );
  return thing.kind === 'supply'
    ? [...numbers, { key: `supply ${thing.title.toLowerCase()}`, what: 'title and other figures' }]
    : numbers;
}

function differ(what: Likeness['what'], thing: PartThing, other: PartThing): boolean {
  return what === 'part number' ? thing.name !== other.name : thing.clauses !== other.clauses;
}

/** The clauses of an entry as written, without regard to spaces and lines. */
function clauseText(thing: Thing): string {
  return [...everyLine(thing.line?.children ?? [])]
    .flatMap((l) => l.tokens.map((t) => t.image))
    .filter((i) => i !== ',')
    .join(' ');
}
