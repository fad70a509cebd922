// `baywright server`: the language server, for any editor that speaks the Language Server Protocol.
import { defineCommand, flag, text } from '../command.js';
import { CannotRun } from '../shell.js';

export default defineCommand({
  name: 'server',
  summary: 'answer an editor over the Language Server Protocol',
  docs: 'Starts the language server and answers until the editor closes the channel. Over standard input and output unless another channel is named.',
  takes: [],
  options: {
    stdio: flag('--stdio', 'over standard input and output'),
    socket: text('--socket <port>', 'over a socket of this machine that the editor listens on'),
    pipe: text('--pipe <name>', 'over a named pipe or local socket that the editor listens on'),
    ipc: flag('--node-ipc', 'over the channel to the Node process that started it'),
    watched: text('--clientProcessId <id>', 'end when this process ends'),
  },
  examples: [
    ['baywright server --stdio', 'what most editors are set to'],
    ['baywright server --socket 6010', 'over a socket'],
  ],
  async run({ shell }, _args, { socket, pipe, ipc, stdio }) {
    if (socket !== undefined && !/^\d{1,5}$/.test(socket))
      throw new CannotRun(`“${socket}” is no port; write --socket 6010`);
    const place = socket === undefined ? pipe : `port ${socket}`;
    // Where nobody listens nothing is left to wait for, and the program would end without a word.
    if (place !== undefined)
      process.once('beforeExit', () => {
        shell.err.write(`baywright: no editor listens on ${place}, or it has closed the channel\n`);
        process.exit(2);
      });
    // The connection reads its channel from the process's own arguments.
    if (socket === undefined && pipe === undefined && !ipc && !stdio) process.argv.push('--stdio');
    const { registerRenderers, startServer } = await import('@baywright/server');
    const { guideRenderers } = await import('../lend-guides.js');
    registerRenderers(guideRenderers(shell, await hasEngine()));
    startServer();
    return new Promise<number>(() => undefined);
  },
});

/** Whether the typesetter of this machine is installed; the universal package of the editor leaves it out. */
async function hasEngine(): Promise<boolean> {
  return import('@myriaddreamin/typst-ts-node-compiler').then(
    () => true,
    () => false,
  );
}
