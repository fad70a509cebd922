// Finds the procedures that a command line names, by number or by path, in the libraries around the current folder.
import type { Analysis } from '@baywright/language';
import { collect, type Shelf } from '../cli/libraries.js';
import { CannotRun, type Shell } from '../cli/shell.js';

export interface FoundProcedure {
  readonly shelf: Shelf;
  readonly analysis: Analysis;
  readonly number: string;
}

/** The procedures named, each once; all of the folder where none is named. A name that is none is refused. */
export function findProcedures(shell: Shell, names: readonly string[]): FoundProcedure[] {
  const found = names.flatMap((name) => {
    const own = isPath(shell, name) ? proceduresOf(shell, [name]) : numbered(shell, name);
    if (own.length === 0)
      throw new CannotRun(`there is no procedure ${name} here; write its number or its path`);
    return own;
  });
  const all = names.length === 0 ? proceduresOf(shell, []) : found;
  const seen = new Set<string>();
  return all.filter(({ shelf, analysis }) => {
    const key = `${shelf.root}/${analysis.path}`;
    return !seen.has(key) && seen.add(key);
  });
}

/** The library of the current folder, for what concerns it as a whole. */
export function shelvesHere(shell: Shell, paths: readonly string[]): readonly Shelf[] {
  const { shelves, troubles } = collect(shell, paths);
  const [trouble] = troubles;
  if (trouble !== undefined) throw new CannotRun(`${trouble.path} ${trouble.problem}`);
  return shelves;
}

export const isPath = (shell: Shell, name: string): boolean => shell.kind(shell.resolve(name)) !== undefined;

function numbered(shell: Shell, number: string): FoundProcedure[] {
  return shelvesHere(shell, []).flatMap((shelf) => {
    const path = shelf.library.numbered(number)?.path;
    return path === undefined ? [] : procedure(shelf, path);
  });
}

function proceduresOf(shell: Shell, paths: readonly string[]): FoundProcedure[] {
  return shelvesHere(shell, paths).flatMap((shelf) => shelf.files.flatMap((path) => procedure(shelf, path)));
}

function procedure(shelf: Shelf, path: string): FoundProcedure[] {
  if (shelf.library.model(path)?.kind !== 'procedure') return [];
  const analysis = shelf.library.analyse(path);
  const number = analysis?.model.number;
  return analysis === undefined || number === undefined ? [] : [{ shelf, analysis, number }];
}
