// Checks what a command line names and gathers the findings in the order in which they are shown.
import { type Finding, severityOf } from '@baywright/language';
import { type Collection, collect, type Shelf, type Trouble } from './libraries.js';
import type { Shell } from './shell.js';

/** A finding with the library it was found in. */
export interface Found {
  readonly shelf: Shelf;
  readonly finding: Finding;
}

export interface Checked {
  readonly collection: Collection;
  /** By library, then file, then place. */
  readonly found: readonly Found[];
  readonly troubles: readonly Trouble[];
  /** How many files were checked. */
  readonly files: number;
}

/** Called after each file, for progress. */
export type Progress = (done: number, all: number) => void;

export function checkPaths(shell: Shell, typed: readonly string[], progress: Progress = () => {}): Checked {
  const collection = collect(shell, typed);
  const all = collection.shelves.reduce((sum, shelf) => sum + shelf.files.length, 0);
  let done = 0;
  const found = collection.shelves.flatMap((shelf) =>
    checkShelf(shelf, () => {
      done++;
      progress(done, all);
    }),
  );
  return { collection, found, troubles: collection.troubles, files: all };
}

/** The findings of the files asked for, and of the settings; catalogues that they use are reported where they are asked for. */
export function checkShelf(shelf: Shelf, step: () => void = () => {}): Found[] {
  const settings = shelf.settingsFindings.flatMap((finding) => severityOf(finding, shelf.settings) ?? []);
  const own = shelf.files.flatMap((path) => {
    const findings = shelf.library.analyse(path)?.findings ?? [];
    step();
    return findings;
  });
  return [...settings, ...own].map((finding) => ({ shelf, finding }));
}
