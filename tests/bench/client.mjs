// A client of a language server on stdio: opens, edits, asks, and waits for the findings that answer an edit.
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { residentOf } from './measure.mjs';

/**
 * Starts a server over a folder. `language`: its language id. `settings` answers what it asks of its configuration.
 * `versions`: whether it tells the version that its findings are of; without, any findings of the document answer.
 */
export async function session(
  server,
  folder,
  { language = 'baywright', settings = () => ({}), versions = true } = {},
) {
  const child = spawn(process.execPath, [...server, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const connection = createProtocolConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const waiting = new Map();
  connection.onNotification('textDocument/publishDiagnostics', ({ uri, version }) => {
    const key = versions && version !== undefined ? `${uri}@${version}` : uri;
    waiting.get(key)?.(performance.now());
  });
  connection.onRequest('workspace/configuration', ({ items }) => items.map((item) => settings(item.section)));
  connection.onRequest('window/workDoneProgress/create', () => null);
  connection.onRequest('client/registerCapability', () => null);
  connection.listen();
  const begin = performance.now();
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: null,
    workspaceFolders: [{ uri: pathToFileURL(folder).href, name: 'bench' }],
    capabilities: { workspace: { configuration: true }, textDocument: { publishDiagnostics: {} } },
  });
  await connection.sendNotification('initialized', {});
  const current = new Map();
  const uri = (path) => pathToFileURL(join(folder, path)).href;
  const key = (path) => (versions ? `${uri(path)}@${current.get(path)}` : uri(path));
  const answered = (path) => new Promise((resolve) => waiting.set(key(path), resolve));
  return {
    begin,
    connection,
    uri,
    /** The findings of a document at the version it is at, whenever they come. */
    answered,
    async open(path) {
      current.set(path, 1);
      const done = answered(path);
      const text = readFileSync(join(folder, path), 'utf8');
      await connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri: uri(path), languageId: language, version: 1, text },
      });
      return done;
    },
    /** Milliseconds clock when the findings of the edited text were received. */
    edit(path, range, text) {
      current.set(path, current.get(path) + 1);
      const done = answered(path);
      connection.sendNotification('textDocument/didChange', {
        textDocument: { uri: uri(path), version: current.get(path) },
        contentChanges: [{ range, text }],
      });
      return done;
    },
    ask: (method, path, position) =>
      connection.sendRequest(method, { textDocument: { uri: uri(path) }, position }),
    resident: () => residentOf(child.pid),
    async close() {
      await connection.sendRequest('shutdown');
      await connection.sendNotification('exit');
      connection.dispose();
    },
  };
}

/** Types two letters and takes them away again, over and over, and gives the milliseconds to the findings of each edit. */
export async function edits(client, path, position, count, pause = 0) {
  const { line, character } = position;
  const times = [];
  const runIn = 8;
  for (let i = 0; i < count + runIn; i++) {
    const end = { line, character: character + (i % 2 === 0 ? 0 : 3) };
    const begin = performance.now();
    const done = await client.edit(path, { start: { line, character }, end }, i % 2 === 0 ? ', x' : '');
    if (i >= runIn) times.push(done - begin);
    if (pause > 0) await new Promise((resolve) => setTimeout(resolve, pause));
  }
  return times;
}
