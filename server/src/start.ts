// The server on Node: over standard input and output, a socket or an IPC channel, as the arguments say
// (`--stdio`, `--socket=PORT`, `--pipe=NAME`, `--node-ipc`).
import { setFlagsFromString } from 'node:v8';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { clientFiles } from './client-files.js';
import { serve } from './connection.js';
import { dayOf } from './day.js';
import { diskFiles } from './disk-files.js';

/**
 * How much the heap may grow before it is cleared, in per cent. A check leaves much behind and little stays: left alone, the
 * engine lets the heap of a large library grow to several times of what is alive. Checks take a tenth longer so.
 */
const HEAP_GROWTH = 130;

/** Starts the server on the channel that the process arguments name. */
export function startServer(): void {
  setFlagsFromString(`--heap-growing-percent=${HEAP_GROWTH}`);
  const connection = createConnection(ProposedFeatures.all);
  serve(connection, {
    files: ({ filesByClient }) => (filesByClient ? clientFiles(connection) : diskFiles),
    now: () => performance.now(),
    today: () => dayOf(new Date()),
    later(milliseconds, work) {
      if (milliseconds <= 0) {
        const immediate = setImmediate(work);
        return () => clearImmediate(immediate);
      }
      const timer = setTimeout(work, milliseconds);
      return () => clearTimeout(timer);
    },
  });
}
