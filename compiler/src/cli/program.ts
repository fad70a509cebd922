// The program as one file for both its entries: the command line, and a thread that helps it.
import type { ChildProcess } from 'node:child_process';
import { lendTypesetter } from '../pdf/typesetter-process.js';
import { COULD_NOT_RUN, run } from './main.js';
import { nodeShell } from './node-shell.js';
import { reason } from './reasons.js';

export { helpOut as thread } from './thread.js';

/** One command line, one exit code. A typesetter may have been started for it ahead. */
export async function command(typesetter: ChildProcess | undefined): Promise<void> {
  if (typesetter !== undefined) lendTypesetter(typesetter);
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    // A reader that leaves early (`| head`) is no failure of ours.
    if (error.code === 'EPIPE') process.exit(0);
    process.stderr.write(`baywright: the output ${reason(error)}\n`);
    process.exit(COULD_NOT_RUN);
  });
  process.exitCode = await run(process.argv.slice(2), nodeShell());
  await Promise.all([process.stdout, process.stderr].map(written));
  // Left to end by itself, the engine would clear its heap away first: a tenth of the time that a check takes.
  process.exit();
}

/** Until all that was said has left the program: some systems take it over later, or say a turn later that they could not. */
const written = (stream: NodeJS.WriteStream): Promise<void> =>
  new Promise((done) => stream.write('', () => setImmediate(done)));
