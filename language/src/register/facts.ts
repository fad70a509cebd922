// What a file says in shop terms, without regard to how it is laid out: figures of things by name, and the work line by
// line. Two editions of a guide are compared by these.
import { clausePieces, guardText, joined } from '../format/clause-text.js';
import { linePieces } from '../format/line-text.js';
import type { Job } from '../names/job.js';
import { everyLine } from '../names/job.js';
import { mentionsOf } from '../names/mentions.js';
import type { FileModel, Thing } from '../names/model.js';
import { resolvePath, type Scope } from '../names/scope.js';
import type { Clause, Line, Raw } from '../syntax/tree.js';
import { pickedWrenches } from './picked-wrenches.js';

/** One figure or word about one thing: the torque of the hub bolts. */
export interface Fact {
  /** Tells it from every other fact of the file: `hub-bolt torque`. */
  readonly key: string;
  /** Whom it is about in words for people; empty for the file itself. */
  readonly subject: string;
  readonly what: string;
  readonly value: string;
  /** Library path, and line from 0. */
  readonly file: string;
  readonly line: number;
}

/** One line of the work. */
export interface WorkLine {
  readonly text: string;
  /** The title of its step, or of its section. */
  readonly step: string;
  readonly file: string;
  readonly line: number;
  /** Of a picture or film: what tells its file from another one under the same name, where that is known. */
  readonly shown?: string;
}

/** What tells the file of a picture or film from another one: a hash. By library path; undefined where it is not known. */
export type ShownFiles = (path: string) => string | undefined;

export interface ShopFacts {
  readonly path: string;
  readonly kind: FileModel['kind'];
  readonly number: string;
  readonly title: string;
  readonly facts: readonly Fact[];
  readonly work: readonly WorkLine[];
}

/**
 * The facts of a procedure: its head, its own entries, those of its imports that it uses, the wrenches picked for its
 * torques, the rules that hold in it, and its work with the operations it performs from others. Of a catalogue: its head and its entries.
 * Status, review day and revisions are left out: they say how the file stands, not what is done on the vehicle.
 */
export function shopFacts(job: Job, shown: ShownFiles = () => undefined): ShopFacts {
  const { file } = job;
  const work =
    file.kind === 'procedure' ? [...workLines(file, file.work, shown), ...performedLines(job, shown)] : [];
  const named = [...file.things, ...usedThings(job)];
  const things = [...new Set([...named, ...(file.kind === 'procedure' ? pickedWrenches(job, named) : [])])];
  return {
    path: file.path,
    kind: file.kind,
    number: file.number ?? '',
    title: file.title,
    facts: numberedKeys([...headFacts(file), ...things.flatMap((thing) => thingFacts(thing, job))]),
    work,
  };
}

const HEAD_WORDS: Readonly<Partial<Record<Line['kind'], string>>> = {
  applies: 'applies to',
  sides: 'sides',
  labour: 'labour',
  crew: 'crew',
};

function headFacts(file: FileModel): Fact[] {
  const at = { subject: '', file: file.path };
  const facts: Fact[] = [
    { ...at, key: 'title', what: 'title', value: file.title, line: file.head?.firstLine ?? 0 },
  ];
  for (const line of file.lines) {
    const what = HEAD_WORDS[line.kind];
    if (what === undefined) continue;
    const value = codeText(file, line).slice(what.length).trim();
    facts.push({ ...at, key: what, what, value, line: line.firstLine });
  }
  for (const line of file.prerequisites)
    facts.push({
      ...at,
      key: 'prerequisite',
      what: 'prerequisite',
      value: wholeText(file, line),
      line: line.firstLine,
    });
  return facts;
}

function thingFacts(thing: Thing, job: Job): Fact[] {
  const file = fileOf(thing, job);
  if (!thing.line || !file) return [];
  const at = { subject: thing.title, file: thing.file };
  const facts: Fact[] = [
    { ...at, key: thing.name, what: thing.kind, value: thing.title, line: thing.line.firstLine },
  ];
  const add = (line: Line, outer: string): void => {
    if (line.kind === 'when') {
      const guard = line.guard ? guardText(file.tree.text, line.guard) : '';
      for (const child of line.children) add(child, guard);
    } else if (line.kind === 'clauses' && !line.broken) {
      const guard = line.guard ? guardText(file.tree.text, line.guard) : outer;
      const where = guard === '' ? '' : ` ${guard}`;
      for (const clause of line.clauses) {
        const written = clauseWritten(file.tree.text, clause);
        const isFlag = written === clause.word;
        const value = isFlag || BARE.has(clause.word) ? written : written.slice(clause.word.length).trim();
        const word =
          clause.word === 'bare' ? 'value' : clause.word === 'of' ? 'count and thread' : clause.word;
        facts.push({
          ...at,
          key: `${thing.name} ${word}${where}`,
          what: `${word}${where}`,
          value,
          line: line.firstLine,
        });
      }
    } else {
      const value = wholeText(file, line);
      if (value !== '')
        facts.push({ ...at, key: `${thing.name} text`, what: 'text', value, line: line.firstLine });
    }
  };
  for (const child of thing.line.children) add(child, '');
  return facts;
}

/** Clauses whose word is part of what is written: `4 of M12x1.5`, `at least 22.0 mm`. */
const BARE: ReadonlySet<string> = new Set(['bare', 'of', 'at least', 'at most']);

/** Facts with one key get a number, in the order written: `wheel behind 2`. */
function numberedKeys(facts: readonly Fact[]): Fact[] {
  const seen = new Map<string, number>();
  return facts.map((fact) => {
    const count = (seen.get(fact.key) ?? 0) + 1;
    seen.set(fact.key, count);
    return count === 1 ? fact : { ...fact, key: `${fact.key} ${count}` };
  });
}

function workLines(file: FileModel, lines: readonly Line[], shown: ShownFiles, group = ''): WorkLine[] {
  const found: WorkLine[] = [];
  let step = group;
  for (const line of everyLine(lines)) {
    if (line.kind === 'section') step = line.word;
    else if (line.kind === 'step' || line.kind === 'operation') step = line.prose?.text.trim() || step;
    if (line.kind === 'accept') continue;
    const path = pathOf(line);
    const at = path === undefined ? undefined : resolvePath(file.path, path.text);
    const hash = at === undefined ? undefined : shown(at);
    found.push({
      text: wholeText(file, line),
      step,
      file: file.path,
      line: line.firstLine,
      ...(hash === undefined ? {} : { shown: hash }),
    });
  }
  return found;
}

/** The lines of the operations that a procedure performs from others, each operation once. */
function performedLines({ file, imports }: Job, shown: ShownFiles): WorkLine[] {
  const found: WorkLine[] = [];
  const seen = new Set<string>();
  const visit = (from: FileModel, lines: readonly Line[]): void => {
    for (const line of everyLine(lines)) {
      if (line.kind !== 'perform') continue;
      const callee = line.from && !line.from.hole ? imports.numbered(line.from.text) : from;
      const operation = callee?.operations.find((one) => one.name === line.operation?.text);
      if (!callee || !operation?.line || seen.has(operation.id)) continue;
      seen.add(operation.id);
      if (callee !== file)
        found.push(
          ...workLines(callee, operation.line.children, shown, `${callee.number} ${operation.name}`),
        );
      visit(callee, operation.line.children);
    }
  };
  visit(file, file.work);
  return found;
}

/** Imported things that the work names, with what those name in turn, and every rule. */
function usedThings(job: Job): Thing[] {
  const { file, scopes } = job;
  if (file.kind !== 'procedure') return [];
  const found = new Map<string, Thing>();
  const visit = (scope: Scope, lines: readonly Line[]): void => {
    for (const line of everyLine(lines)) {
      for (const { name } of mentionsOf(line)) {
        const thing = scope.resolve(name.text);
        if (!thing?.line || thing.kind === 'operation' || thing.file === file.path || found.has(thing.id))
          continue;
        found.set(thing.id, thing);
        visit(scope, thing.line.children);
      }
    }
  };
  for (const scope of scopes) {
    visit(scope, scope.file.lines);
    for (const thing of scope.names.values())
      if (thing.kind === 'rule' && thing.file !== file.path) found.set(thing.id, thing);
  }
  return [...found.values()].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}

const fileOf = (thing: Thing, { scopes }: Job): FileModel | undefined =>
  scopes.flatMap((scope) => scope.files).find((file) => file.path === thing.file);

function wholeText(file: FileModel, line: Line): string {
  const text = line.prose?.text.trim().replace(/\s+/g, ' ') ?? '';
  const code = codeText(file, line);
  return text === '' ? code : `${code}: ${text}`;
}

/** The code of a line in its one form; of a broken line, its words. A picture goes by the name of its file: folders print nowhere. */
function codeText(file: FileModel, line: Line): string {
  if (line.broken || line.kind === 'unread') return line.tokens.map((token) => token.image).join(' ');
  const code = joined(linePieces(file.tree.text, line));
  const path = pathOf(line);
  return path === undefined ? code : code.replace(path.text, () => path.text.replace(/^.*\//, ''));
}

/** The file that a line shows. */
const pathOf = (line: Line): Raw | undefined =>
  (line.kind === 'picture' || line.kind === 'clip') && !line.path?.hole ? line.path : undefined;

/** A clause in its one form: `torque 115 N·m`. */
export function clauseWritten(text: string, clause: Clause): string {
  return joined(clausePieces(text, [clause], undefined, 'nothing'));
}
