// How work on many files is shared out among threads, and what goes over to them.
import type { GuideOrder } from './build/guides.js';
import type { OtherThread, Shell } from './shell.js';

/** Every n-th file goes to the same thread, so that neighbours that cost much are shared out. */
export const shareOut = (files: readonly string[], count: number): string[][] =>
  Array.from({ length: count }, (_, n) => files.filter((_, at) => at % count === n));

export const startThreads = (shell: Shell, works: readonly ThreadWork[]): OtherThread[] =>
  works.flatMap((work) => shell.startThread?.(work) ?? []);

/** Threads are started, and what they say is heard, between two turns of the event loop. */
export const nextTurn = (): Promise<void> => new Promise((next) => setImmediate(next));

/** Some files of one library. Plain data: it is copied to the thread. */
interface Share {
  readonly root: string;
  readonly hasSettings: boolean;
  /** Every library path asked for; `files` are those of this thread. */
  readonly asked: readonly string[];
  readonly files: readonly string[];
}

/**
 * `check` is answered once, with what is kept of each file. `build` is answered with the parts of the files, waits for
 * what the whole library says of each, and then says the result of each file.
 */
export type ThreadWork =
  | (Share & { readonly kind: 'check' })
  | (Share & { readonly kind: 'build'; readonly order: GuideOrder });

/** What goes over: something said, or a failure whose message says all. */
export type ThreadSaid = { readonly said: unknown } | { readonly cannotRun: string };
