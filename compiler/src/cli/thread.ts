// Another thread of the program: checks some files of a library, or makes their guides, and says what came of it.
import { parentPort, workerData } from 'node:worker_threads';
import type { Finding } from '@baywright/language';
import { checkFiles } from './check.js';
import { openLibrary } from './libraries.js';
import { nodeShell } from './node-shell.js';
import type { ThreadSaid, ThreadWork } from './sharing.js';
import { CannotRun } from './shell.js';

/** Does the work that the thread was started with. */
export async function helpOut(): Promise<void> {
  try {
    await run(workerData as ThreadWork);
  } catch (error) {
    if (!(error instanceof CannotRun)) throw error;
    parentPort?.postMessage({ cannotRun: error.message } satisfies ThreadSaid);
  }
}

const say = (said: unknown): void => parentPort?.postMessage({ said } satisfies ThreadSaid);

async function run(work: ThreadWork): Promise<void> {
  const shell = nodeShell();
  const library = openLibrary(shell, work.root, work.hasSettings, work.asked);
  if (work.kind === 'check') {
    say(checkFiles(shell, library, work.files));
    return;
  }
  const { guidesOf, partsOf } = await import('./build/guides.js');
  const shelf = { ...library, files: work.asked };
  const heard = new Promise<ReadonlyMap<string, readonly Finding[]>>((hear) =>
    parentPort?.once('message', hear),
  );
  say(partsOf(shelf, work.files));
  const wide = await heard;
  for (const path of work.files)
    say(await guidesOf(shell, shelf, work.order, path, wide.get(path) ?? [], undefined));
}
