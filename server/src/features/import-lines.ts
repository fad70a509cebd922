// The lines that import other files: which are used, how another is written and where its line goes.
import { resolvePath, type TextEdit, wholeLines } from '@baywright/language';
import type { Snapshot } from '../snapshot.js';

/** Library paths of the files that the document imports. */
export function filesUsed(snapshot: Snapshot): ReadonlySet<string> {
  const paths = snapshot.library.model(snapshot.path)?.uses ?? [];
  return new Set(paths.flatMap((u) => (u.path ? (resolvePath(snapshot.path, u.path.text) ?? []) : [])));
}

/** Tells a catalogue by its opening line, so that a list does not read the whole library. */
export const CATALOGUE = /^(?:\s*#.*\r?\n|\s*\r?\n)*catalogue\b/;

/** A line that imports a file, behind the imports there are, else behind the opening line. */
export function useLine(snapshot: Snapshot, target: string): TextEdit {
  const { tree, text, path } = snapshot;
  const last = tree.lines.filter((l) => l.kind === 'use').at(-1);
  const head = tree.lines.find((l) => l.kind === 'procedure' || l.kind === 'catalogue');
  const at = wholeLines(text, last ?? head ?? { start: 0, end: 0 }).end;
  const line = `use "${relative(path, target)}"\n`;
  return { file: path, span: { start: at, end: at }, text: last ? line : `\n${line}` };
}

/** The path of a file as another writes it. */
export function relative(from: string, to: string): string {
  const a = from.split('/').slice(0, -1);
  const b = to.split('/');
  let same = 0;
  while (same < a.length && same < b.length - 1 && a[same] === b[same]) same++;
  return [...a.slice(same).map(() => '..'), ...b.slice(same)].join('/');
}
