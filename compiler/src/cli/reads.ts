// What is read of the world while something is made, noted so that a later run can tell whether it would read the same.
import type { Shell } from './shell.js';

/** An answer that was given: its hash and, for a file, the mark by which it is known unopened. */
interface Answer {
  readonly hash: string;
  readonly mark?: string;
}

type Answerable = ReturnType<Shell['read' | 'bytes' | 'list']>;

/** How something was asked for. */
type Question = 'read' | 'bytes' | 'list';

/** Answers by what was asked: `bytes /shop/pictures/hub.svg`. */
export type Reads = Readonly<Record<string, Answer>>;

/** The same shell, with note taken of every file and folder that is read through it. */
export function notingShell(shell: Shell): { readonly shell: Shell; reads(): Reads } {
  const noted = new Map<string, Answer>();
  const note = <Given extends Answerable>(question: Question, path: string, given: Given): Given => {
    const key = `${question} ${path}`;
    if (!noted.has(key)) {
      const mark = question === 'list' ? undefined : settledMark(shell, path);
      noted.set(key, { hash: hashOf(shell, given), ...(mark === undefined ? {} : { mark }) });
    }
    return given;
  };
  return {
    shell: {
      ...shell,
      read: (path) => note('read', path, shell.read(path)),
      bytes: (path) => note('bytes', path, shell.bytes(path)),
      list: (folder) => note('list', folder, shell.list(folder)),
    },
    reads: () => Object.fromEntries(noted),
  };
}

/** Whether everything that was read is there and says the same. */
export function readsHold(shell: Shell, reads: Reads): boolean {
  return Object.entries(reads).every(([key, { hash, mark }]) => {
    const [question, path] = parted(key);
    if (mark !== undefined && shell.seen?.(path)?.mark === mark) return true;
    return hash === hashOf(shell, shell[question](path));
  });
}

function parted(key: string): [Question, string] {
  const at = key.indexOf(' ');
  return [key.slice(0, at) as Question, key.slice(at + 1)];
}

function hashOf(shell: Shell, given: Answerable): string {
  if (given === undefined) return '';
  return shell.hash(given instanceof Uint8Array ? given : JSON.stringify(given));
}

/** Clocks of drives are coarse: a file may change twice in a tick and look the same. After that long it cannot. */
const SETTLED_MS = 2000;

/** By what a file is known in the state it is in; undefined where a change might not show. */
export function settledMark(shell: Shell, path: string): string | undefined {
  const seen = shell.seen?.(path);
  return seen !== undefined && seen.changed < shell.now().getTime() - SETTLED_MS ? seen.mark : undefined;
}
