// Watches a folder with all below it. By hand on Linux: there Node 20 loses sight of a file that was replaced by another,
// which is how most editors save.
import { existsSync, type FSWatcher, readdirSync, statSync, watch } from 'node:fs';
import { join } from 'node:path';

/** Changes come in bursts when an editor saves; they are handed on together. */
const BURST_MS = 60;

export interface FolderWatch {
  stop(): void;
  /** Settles when the folder itself is gone. */
  readonly gone: Promise<void>;
}

/** `changed` is given paths of files, and of folders that came or went, those with a slash at the end. */
export function watchFolder(folder: string, changed: (paths: readonly string[]) => void): FolderWatch {
  let waiting = new Set<string>();
  let timer: NodeJS.Timeout | undefined;
  let leave = (): void => {};
  const gone = new Promise<void>((resolve) => {
    leave = resolve;
  });
  const note = (path: string): void => {
    waiting.add(path);
    clearTimeout(timer);
    timer = setTimeout(() => {
      const paths = [...waiting].sort();
      waiting = new Set();
      if (existsSync(folder)) changed(paths);
      else leave();
    }, BURST_MS);
  };
  const end = process.platform === 'linux' ? eachFolder(folder, note) : wholeTree(folder, note);
  return {
    gone,
    stop: () => {
      clearTimeout(timer);
      end();
    },
  };
}

/** Where the system itself can watch a tree. */
function wholeTree(folder: string, note: (path: string) => void): () => void {
  const watcher = watch(folder, { recursive: true }, (_event, name) => {
    if (name !== null) note(join(folder, name));
  });
  watcher.on('error', () => {
    watcher.close();
    note(`${folder}/`);
  });
  return () => watcher.close();
}

/** One watch for each folder: a folder tells of everything in it by name, whatever file bears the name. */
function eachFolder(root: string, note: (path: string) => void): () => void {
  const watchers = new Map<string, FSWatcher>();
  const add = (folder: string): void => {
    if (watchers.has(folder)) return;
    try {
      const watcher = watch(folder, (_event, name) => look(folder, name));
      watcher.on('error', () => drop(folder));
      watchers.set(folder, watcher);
      for (const entry of readdirSync(folder, { withFileTypes: true }))
        if (entry.isDirectory() && !isHidden(entry.name)) add(join(folder, entry.name));
    } catch {
      // Gone again, not to be opened, or one more than the system watches: the others are watched all the same.
    }
  };
  const drop = (folder: string): void => {
    for (const [path, watcher] of watchers)
      if (path === folder || path.startsWith(`${folder}/`)) {
        watcher.close();
        watchers.delete(path);
      }
    note(`${folder}/`);
  };
  const look = (folder: string, name: string | null): void => {
    if (!existsSync(folder)) drop(folder);
    else if (name !== null && !isHidden(name)) {
      const path = join(folder, name);
      if (isFolder(path)) {
        // A folder may come with files in it, or take the place of one that was watched.
        if (!watchers.has(path)) note(`${path}/`);
        add(path);
      } else if (watchers.has(path)) drop(path);
      else note(path);
    }
  };
  add(root);
  return () => {
    for (const watcher of watchers.values()) watcher.close();
  };
}

const isFolder = (path: string): boolean => {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false;
  }
};

const isHidden = (name: string): boolean => name.startsWith('.') || name === 'node_modules';
