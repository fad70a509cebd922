// R201 to R203: what only the whole library can tell: entries that nothing uses, rules that bind to nothing, things
// declared alike in two files.
import { type Finding, finding } from '../diagnostics/define.js';
import { entryUnused } from '../diagnostics/r201-entry-unused.js';
import { ruleBindsNothing } from '../diagnostics/r202-rule-binds-nothing.js';
import { declaredAlike } from '../diagnostics/r203-declared-alike.js';
import type { Library } from '../library.js';
import { everyLine } from '../names/job.js';
import { clausesOf, type FileModel, hasClause, nameSpan, type Thing } from '../names/model.js';
import { ANY_KIND } from '../rules/match.js';
import { severityOf } from '../settings/index.js';
import type { EventPattern, Line, RuleLine } from '../syntax/tree.js';
import { BUILT_IN_NAMES } from '../vocabulary/kinds.js';
import { acceptedIn } from './accept.js';

/** Findings over the files named, with the house's severities. Without a procedure among them nothing counts as unused. */
export function libraryFindings(library: Library, paths: readonly string[]): Finding[] {
  const files = paths.map((path) => library.model(path)).filter((m) => m !== undefined);
  const raw = [...unusedEntries(files), ...files.flatMap((file) => idleRules(file, files)), ...alike(files)];
  return raw
    .map((f) => severityOf(f, library.settings))
    .filter((f) => f !== undefined)
    .filter(
      (f) =>
        !files.some(
          (file) =>
            file.path === f.file && acceptedIn(file).some((a) => a.code === f.code || a.code === f.name),
        ),
    );
}

function unusedEntries(files: readonly FileModel[]): Finding[] {
  if (!files.some((f) => f.kind === 'procedure')) return [];
  const used = new Set<string>();
  for (const file of files)
    for (const line of everyLine(file.lines)) for (const word of wordsOf(line)) used.add(word);
  return files
    .filter((f) => f.kind === 'catalogue')
    .flatMap((file) =>
      file.things
        .filter((t) => !isUsedUnnamed(t) && !used.has(t.name))
        .flatMap((thing) => {
          const span = nameSpan(thing);
          return span ? [finding(entryUnused, { file: file.path, span }, { name: thing.name })] : [];
        }),
    );
}

/** Rules hold without being named, and a torque wrench is chosen by its range. */
function isUsedUnnamed(thing: Thing): boolean {
  return thing.kind === 'rule' || (thing.kind === 'tool' && hasClause(thing, 'torque'));
}

/** Every word of a line's code and of the references in its text, except the name that an entry declares. */
function wordsOf(line: Line): string[] {
  const words = line.tokens
    .filter((t) => line.kind !== 'entry' || t.start !== line.name.start)
    .map((t) => t.image.replaceAll('"', ''));
  return [...words, ...(line.prose?.references.map((r) => r.name.text) ?? [])];
}

function idleRules(file: FileModel, files: readonly FileModel[]): Finding[] {
  const things = files.flatMap((f) => [...f.things]);
  const names = new Set([...things.map((t) => t.name), ...BUILT_IN_NAMES]);
  return file.things
    .filter((t) => t.kind === 'rule')
    .flatMap((rule) => {
      const lines = [...everyLine(rule.line?.children ?? [])].filter((l): l is RuleLine => l.kind === 'rule');
      for (const target of lines.flatMap((l) => l.clauses).flatMap(targetsOf)) {
        const idle = idleTarget(target, things, names);
        if (idle)
          return [
            finding(
              ruleBindsNothing,
              { file: file.path, span: idle.span },
              { rule: rule.name, what: idle.what },
            ),
          ];
      }
      return [];
    });
}

type Target = NonNullable<EventPattern['target']>;

function targetsOf(clause: RuleLine['clauses'][number]): Target[] {
  const pattern = 'pattern' in clause ? clause.pattern?.target : undefined;
  const state = 'state' in clause ? clause.state?.target : undefined;
  return [pattern, state].filter((t) => t !== undefined);
}

function idleTarget(
  target: Target,
  things: readonly Thing[],
  names: ReadonlySet<string>,
): { readonly span: { readonly start: number; readonly end: number }; readonly what: string } | undefined {
  if (target.form === 'names') {
    const [first] = target.names;
    const idle = first && target.names.every((n) => !names.has(n.text));
    return idle ? { span: first, what: `no file declares \`${first.text}\`` } : undefined;
  }
  if (target.form !== 'any' || !target.mark) return undefined;
  const { kind, mark } = target;
  const found = things.some(
    (t) => (kind.text === ANY_KIND || t.kind === kind.text) && t.marks.includes(mark.text),
  );
  return found ? undefined : { span: mark, what: `no ${kind.text} is marked \`${mark.text}\`` };
}

/** One part number on two names; one supply in two files with different figures. */
function alike(files: readonly FileModel[]): Finding[] {
  const first = new Map<string, Thing>();
  const found: Finding[] = [];
  for (const thing of files.flatMap((f) => f.things)) {
    const span = nameSpan(thing);
    for (const { key, what } of likenesses(thing)) {
      const other = first.get(key);
      if (!other) first.set(key, thing);
      else if (span && other.file !== thing.file && differ(what, thing, other)) {
        const at = nameSpan(other);
        const related = at ? [{ file: other.file, span: at, message: 'declared here' }] : [];
        found.push(
          finding(
            declaredAlike,
            { file: thing.file, span, related },
            { name: thing.name, other: other.name, what },
          ),
        );
        break;
      }
    }
  }
  return found;
}

type Likeness = 'part number' | 'title and other figures';

function likenesses(thing: Thing): { readonly key: string; readonly what: Likeness }[] {
  const numbers = clausesOf(thing, 'number').flatMap(({ clause }) =>
    clause.raw && !clause.raw.hole
      ? [{ key: `number ${clause.raw.text}`, what: 'part number' as const }]
      : [],
  );
  return thing.kind === 'supply'
    ? [...numbers, { key: `supply ${thing.title.toLowerCase()}`, what: 'title and other figures' }]
    : numbers;
}

function differ(what: Likeness, thing: Thing, other: Thing): boolean {
  return what === 'part number' ? thing.name !== other.name : clauseText(thing) !== clauseText(other);
}

/** The clauses of an entry as written, without regard to spaces and lines. */
function clauseText(thing: Thing): string {
  return [...everyLine(thing.line?.children ?? [])]
    .flatMap((l) => l.tokens.map((t) => t.image))
    .filter((i) => i !== ',')
    .join(' ');
}
