// Checks again whenever a file changes, until the program is ended. Only what a change can affect is looked at again:
// findings are kept in memory between the rounds as they are on disk between runs.
import { SETTINGS_FILE } from '@baywright/language';
import { type CheckChoice, type Checked, checkCollection } from './check.js';
import type { CheckedFile } from './checked-file.js';
import { diskCache, type FileCache } from './file-cache.js';
import { collect, SUFFIX } from './libraries.js';
import { parent } from './paths.js';
import { CannotRun, type Shell } from './shell.js';

/** Ends of paths that call for another round; folders end with a slash. */
const LOOKED_AT = [SUFFIX, SETTINGS_FILE, '/'];

/** Calls `told` after each round. Ends when `until` does, when a folder is gone, or when a round cannot be run. */
export async function watchPaths(
  shell: Shell,
  typed: readonly string[],
  choice: CheckChoice,
  told: (checked: Checked) => Promise<void>,
  until: Promise<void> = new Promise(() => {}),
): Promise<void> {
  if (shell.watch === undefined) throw new CannotRun('files cannot be watched here');
  let running: Promise<void> = Promise.resolve();
  let fail = (_error: unknown): void => {};
  const failed = new Promise<never>((_, reject) => {
    fail = reject;
  });
  const round = (): void => {
    running = running.then(async () =>
      told(await checkCollection(shell, collect(shell, typed), choice, cacheFor)),
    );
    running.catch(fail);
  };
  round();
  const changed = (paths: readonly string[]): void => {
    if (paths.some((path) => LOOKED_AT.some((end) => path.endsWith(end)))) round();
  };
  const { watch } = shell;
  const folders = (typed.length === 0 ? ['.'] : typed).map((name) => {
    const path = shell.resolve(name);
    return shell.kind(path) === 'folder' ? path : parent(path);
  });
  // What is checked takes in files beside it, so the whole library is watched.
  const roots = new Set([...folders, ...collect(shell, typed).shelves.map(({ root }) => root)]);
  const outer = [...roots].filter(
    (root) => ![...roots].some((other) => root !== other && root.startsWith(`${other}/`)),
  );
  const watchers = outer.map((root) => ({ root, ...watch(root, changed) }));
  const left = watchers.map(async ({ root, gone }) => {
    await gone;
    throw new CannotRun(`${root} is gone: there is nothing left to watch`);
  });
  try {
    await Promise.race([until, failed, ...left]);
  } finally {
    for (const watcher of watchers) watcher.stop();
  }
  await running;

  function cacheFor(shelf: Parameters<typeof diskCache>[1]): FileCache<CheckedFile> {
    return diskCache(shell, shelf, 'findings');
  }
}
