// The ways to the server: socket and IPC on Node, a worker with files by way of the client.
import { fork, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';
import vm from 'node:vm';
import { MessageChannel } from 'node:worker_threads';
import { build } from 'esbuild';
import { expect, test } from 'vitest';
import {
  createProtocolConnection,
  type InitializeResult,
  IPCMessageReader,
  IPCMessageWriter,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { serverBundle } from './session.js';
import { HEAD, PATH, shop } from './shop.js';

const INITIALIZE = { processId: null, rootUri: null, capabilities: {} };

async function greets(connection: ProtocolConnection): Promise<void> {
  connection.listen();
  const result = await connection.sendRequest<InitializeResult>('initialize', INITIALIZE);
  expect(result.serverInfo?.name).toBe('baywright');
  await connection.sendRequest('shutdown');
  await connection.sendNotification('exit');
}

test('a socket that the editor listens on', async () => {
  const listener = createServer().listen(0, '127.0.0.1');
  await once(listener, 'listening');
  const address = listener.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  const child = spawn(process.execPath, [await serverBundle(), `--socket=${port}`], { stdio: 'ignore' });
  const [socket] = await once(listener, 'connection');
  await greets(createProtocolConnection(new StreamMessageReader(socket), new StreamMessageWriter(socket)));
  await once(child, 'exit');
  listener.close();
});

test('the IPC channel of a parent process', async () => {
  const child = fork(await serverBundle(), ['--node-ipc'], { stdio: 'ignore' });
  await greets(createProtocolConnection(new IPCMessageReader(child), new IPCMessageWriter(child)));
  await once(child, 'exit');
});

test('a worker that has no disk asks the client for files', async () => {
  const bundle = await build({
    entryPoints: [fileURLToPath(new URL('../../server/src/worker-main.ts', import.meta.url))],
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'iife',
    conditions: ['source', 'browser'],
    logLevel: 'error',
  });
  const { port1, port2 } = new MessageChannel();
  const pictures = '    picture "there.png": A\n    picture "gone.png": B\n';
  const files: Record<string, string> = {
    ...shop(`${HEAD}${pictures}    remove wheel-nut, wheel\n`),
    'procedures/there.png': 'picture',
  };
  const root = 'vscode-vfs://shop/';
  // What a worker has of the browser, and nothing of Node.
  const scope: Record<string, unknown> = {
    setTimeout,
    clearTimeout,
    performance,
    TextEncoder,
    TextDecoder,
    console,
    queueMicrotask,
    URL,
    postMessage: (m: unknown) => port1.postMessage(m),
    addEventListener: () => undefined,
    onmessage: null,
  };
  scope.self = scope;
  port1.on('message', (data: unknown) =>
    (scope.onmessage as ((event: { data: unknown }) => void) | null)?.({ data }),
  );
  vm.runInNewContext(bundle.outputFiles[0]?.text ?? '', scope);
  const found = await new Promise<string[]>((resolve) => {
    let pictureCame = false;
    let id = 0;
    const send = (message: object): void => port2.postMessage({ jsonrpc: '2.0', ...message });
    port2.on(
      'message',
      (m: { id?: number; method?: string; params?: { uri: string; diagnostics: { code: string }[] } }) => {
        if (m.method === 'baywright/listFiles')
          send({ id: m.id, result: Object.keys(files).map((f) => root + f) });
        else if (m.method === 'baywright/readFile')
          send({ id: m.id, result: { content: files[(m.params?.uri ?? '').slice(root.length)] } });
        else if (m.method === 'textDocument/publishDiagnostics' && m.params?.uri === root + PATH) {
          const codes = m.params.diagnostics.map((d) => d.code);
          const missing = codes.filter((code) => code === 'R102').length;
          // A picture that comes later is noticed too.
          if (missing === 1 && !pictureCame) {
            pictureCame = true;
            files['procedures/gone.png'] = 'picture';
            const changes = [{ uri: `${root}procedures/gone.png`, type: 1 }];
            send({ method: 'workspace/didChangeWatchedFiles', params: { changes } });
          } else if (missing === 0) resolve([...codes, pictureCame ? 'came' : 'never missed']);
        } else if (m.id === 1 && m.method === undefined) send({ method: 'initialized', params: {} });
      },
    );
    id += 1;
    send({
      id,
      method: 'initialize',
      params: {
        ...INITIALIZE,
        workspaceFolders: [{ uri: root, name: 'shop' }],
        initializationOptions: { filesByClient: true, locale: 'en' },
      },
    });
  });
  expect(found).toEqual(expect.arrayContaining(['S301', 'came']));
  port1.close();
  port2.close();
});
