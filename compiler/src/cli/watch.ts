// Does the same again whenever a file of a library changes, until the program is ended. What a round need not look at
// again, it knows from what the round before has kept.
import { SETTINGS_FILE } from '@baywright/language';
import { collect, SUFFIX } from './libraries.js';
import { parent } from './paths.js';
import { CannotRun, type Shell } from './shell.js';

/** Ends of paths that call for another round: sources, settings, translations, pictures, and folders that come and go. */
const LOOKED_AT = [SUFFIX, SETTINGS_FILE, '.po', '.svg', '.png', '.jpg', '.jpeg', '.webp', '/'];

/** Runs rounds one after the other. Ends when `until` does, when a folder is gone, or when a round cannot be run. */
export async function watchPaths(
  shell: Shell,
  typed: readonly string[],
  round: () => Promise<void>,
  until: Promise<void> = new Promise(() => {}),
): Promise<void> {
  if (shell.watch === undefined) throw new CannotRun('files cannot be watched here');
  let running: Promise<void> = Promise.resolve();
  let isWaiting = false;
  let fail = (_error: unknown): void => {};
  const failed = new Promise<never>((_, reject) => {
    fail = reject;
  });
  const again = (): void => {
    // What changes while a round waits for its turn is in it.
    if (isWaiting) return;
    isWaiting = true;
    running = running.then(() => {
      isWaiting = false;
      return round();
    });
    running.catch(fail);
  };
  again();
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
  const watchers = outer.map((root) => {
    const changed = (paths: readonly string[]): void => {
      if (paths.some((path) => LOOKED_AT.some((end) => path.endsWith(end)))) again();
    };
    return { root, ...watch(root, changed) };
  });
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
}

/** What a round says at its end, on standard error. */
export const waiting = (now: Date): string => `${now.toTimeString().slice(0, 8)} Waiting for changes.\n`;
