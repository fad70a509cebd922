// Reads the declarations of one file from its tree.

import type { EntryLine, Guard, Line, Name, OperationLine, SectionLine, Tree } from '../syntax/tree.js';
import { memory } from '../text/once.js';
import type { ThingKind } from '../vocabulary/kinds.js';
import { SECTION_BY_WORD } from '../vocabulary/sections.js';
import type { FileModel, Thing, ThingClause } from './model.js';

export function bindFile(path: string, tree: Tree): FileModel {
  const lines = tree.lines;
  const of = <K extends Line['kind']>(kind: K) =>
    lines.filter((l): l is Extract<Line, { kind: K }> => l.kind === kind);
  const head = of('procedure')[0] ?? of('catalogue')[0];
  const sections = of('section');
  const things: Thing[] = [];
  for (const section of sections) {
    const def = SECTION_BY_WORD.get(section.word);
    const kind = def?.declares;
    if (kind) things.push(...declared(section, () => entriesOf(section).map((e) => thingOf(path, kind, e))));
  }
  const work = sections.filter((s) => SECTION_BY_WORD.get(s.word)?.work);
  return {
    path,
    tree,
    kind: head?.kind ?? 'other',
    head,
    number: head?.kind === 'procedure' && head.number && !head.number.hole ? head.number.text : undefined,
    title: head?.prose?.text.trim() ?? '',
    uses: of('use'),
    applies: of('applies'),
    sides: of('sides').flatMap((l) => l.sides.map((s) => s.text)),
    labour: of('labour'),
    revisions: of('revision'),
    status: of('status')[0],
    things,
    operations: operationsOf(path, work),
    prerequisites: sections
      .filter((s) => s.word === 'prerequisites')
      .flatMap((s) => s.children)
      .filter((l) => l.kind === 'prerequisite' || l.kind === 'text'),
    work,
    lines,
  };
}

/** A section that an edit left alone declares the same things: what is known of them still holds. */
const declared = memory<SectionLine, readonly Thing[]>();

/** Entries of a section; `when` around entries is transparent. */
function entriesOf(section: SectionLine): { line: EntryLine; guard: Guard | undefined }[] {
  const found: { line: EntryLine; guard: Guard | undefined }[] = [];
  for (const child of section.children) {
    if (child.kind === 'entry') found.push({ line: child, guard: undefined });
    else if (child.kind === 'when') {
      for (const inner of child.children)
        if (inner.kind === 'entry') found.push({ line: inner, guard: child.guard });
    }
  }
  return found;
}

function thingOf(path: string, kind: ThingKind, entry: { line: EntryLine; guard: Guard | undefined }): Thing {
  const clauses = new Map<string, ThingClause[]>();
  const exists: Guard[] = entry.guard ? [entry.guard] : [];
  const values: Name[] = [];
  const marks: string[] = [];
  const read = (line: Line, outer: Guard | undefined): void => {
    if (line.kind === 'values') values.push(...line.values);
    if (line.kind === 'when') for (const child of line.children) read(child, line.guard);
    if (line.kind !== 'clauses') return;
    const guard = line.guard ?? outer;
    if (guard?.only) exists.push(guard);
    for (const clause of line.clauses) {
      const list = clauses.get(clause.word) ?? [];
      list.push({ clause, guard: guard?.only ? undefined : guard, line });
      clauses.set(clause.word, list);
      if (clause.word === 'marked') marks.push(...clause.words.map((w) => w.text));
      if (clause.word === 'positions') values.push(...clause.words);
    }
  };
  for (const child of entry.line.children) read(child, undefined);
  const { name } = entry.line;
  return {
    id: `${path}#${name.text}`,
    kind,
    name: name.text,
    title: titleOf(entry.line),
    file: path,
    line: entry.line,
    clauses,
    values,
    marks,
    exists,
  };
}

function titleOf(line: Line): string {
  return line.prose?.text.trim().replace(/\s+/g, ' ') || line.head.text;
}

function operationsOf(path: string, work: readonly SectionLine[]): Thing[] {
  const operations: OperationLine[] = work.flatMap((s) =>
    s.children.filter((l): l is OperationLine => l.kind === 'operation'),
  );
  return operations
    .filter((o) => o.name !== undefined)
    .map((line) => ({
      id: `${path}#operation ${line.name?.text}`,
      kind: 'operation',
      name: line.name?.text ?? '',
      title: titleOf(line),
      file: path,
      line,
      clauses: new Map(),
      values: [],
      marks: [],
      exists: [],
    }));
}
