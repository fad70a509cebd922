// The one procedure a command is about, with the run of its work.
import type { Analysis, StateRun } from '@baywright/language';
import { collect, type Shelf } from './libraries.js';
import { relativeTo } from './paths.js';
import { CannotRun, type Shell } from './shell.js';

export interface OneProcedure {
  readonly shelf: Shelf;
  /** Its library path. */
  readonly path: string;
  readonly analysis: Analysis;
  readonly run: StateRun;
}

/** Reads and runs a procedure by the path typed; says why where that cannot be done. */
export function oneProcedure(shell: Shell, typed: string): OneProcedure {
  if (shell.kind(shell.resolve(typed)) === 'folder')
    throw new CannotRun(`${typed} is a folder; name one procedure`);
  const { shelves, troubles } = collect(shell, [typed]);
  const [trouble] = troubles;
  if (trouble) throw new CannotRun(`${trouble.path} ${trouble.problem}`);
  const shelf = shelves.find(({ files }) => files.length > 0);
  const [path] = shelf?.files ?? [];
  const analysis = path === undefined ? undefined : shelf?.library.analyse(path);
  if (!shelf || path === undefined || !analysis)
    throw new CannotRun(`${typed} is no procedure; its name should end in .bay`);
  const { run } = analysis;
  if (!run)
    throw new CannotRun(
      `${relativeTo(shell.folder, shell.resolve(typed))} has no steps: nothing is done in it`,
    );
  return { shelf, path, analysis, run };
}
