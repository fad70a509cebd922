// A session with the real server over stdio, as an editor holds it: the only code of the tests that speaks the protocol.
import { type ChildProcess, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import {
  type CompletionItem,
  type CompletionList,
  createProtocolConnection,
  type Diagnostic,
  type InitializeResult,
  type Position,
  type ProtocolConnection,
  type Range,
  StreamMessageReader,
  StreamMessageWriter,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver-protocol/node';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const BUNDLES = join(ROOT, 'tests/.cache/server');
const DAY = 24 * 60 * 60 * 1000;

let bundled: Promise<string> | undefined;

/**
 * The server as one file, made from the sources once for each test process. It is named by what is in it, so that
 * processes which make the same share it; those that no run of today needed are taken away.
 */
export function serverBundle(): Promise<string> {
  bundled ??= bundle();
  return bundled;
}

async function bundle(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(ROOT, 'server/src/main.ts')],
    write: false,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    conditions: ['source'],
    mainFields: ['module', 'main'],
    banner: { js: "import { createRequire as r } from 'node:module';\nconst require = r(import.meta.url);" },
    logLevel: 'error',
  });
  const code = outputFiles[0]?.contents ?? new Uint8Array();
  const path = join(BUNDLES, `server-${createHash('sha256').update(code).digest('hex').slice(0, 16)}.mjs`);
  mkdirSync(BUNDLES, { recursive: true });
  for (const name of readdirSync(BUNDLES)) {
    const other = join(BUNDLES, name);
    const stat = statSync(other, { throwIfNoEntry: false });
    if (other !== path && stat && stat.mtimeMs < Date.now() - DAY) rmSync(other, { force: true });
  }
  // Written beside and renamed: another process may be starting it. The newer time says that it was needed today.
  const draft = `${path}.${process.pid}`;
  writeFileSync(draft, code);
  renameSync(draft, path);
  return path;
}

export interface SessionOptions {
  readonly files: Readonly<Record<string, string>>;
  /** Client capabilities on top of the usual ones. */
  readonly capabilities?: object;
  /** What the client answers to `workspace/configuration`. */
  readonly settings?: object;
  readonly encodings?: readonly string[];
  readonly locale?: string;
  readonly initializationOptions?: object;
  /** Names of the folders to open; the whole by default. */
  readonly folders?: readonly string[];
}

export interface Session {
  readonly folder: string;
  readonly result: InitializeResult;
  readonly connection: ProtocolConnection;
  readonly process: ChildProcess;
  uri(path: string): string;
  /** Opens a document with this text, `$0` taken out; gives the cursor, and the end of the range where there are two. */
  open(path: string, text?: string): Cursor;
  /** Replaces the whole text. */
  rewrite(path: string, text: string): Cursor;
  edit(path: string, range: Range, text: string): void;
  text(path: string): string;
  request<T>(method: string, params: unknown): Promise<T>;
  /** Diagnostics of the document's present version. */
  diagnostics(path: string): Promise<Diagnostic[]>;
  /** Waits until diagnostics of a file, open or not, satisfy a test. */
  until(path: string, test: (diagnostics: Diagnostic[]) => boolean): Promise<Diagnostic[]>;
  /** Every publish so far, in order. */
  readonly published: { uri: string; version: number | undefined; diagnostics: Diagnostic[] }[];
  write(path: string, text: string | undefined): void;
  changeSettings(settings: object): void;
  close(): Promise<void>;
}

interface Cursor {
  readonly textDocument: { readonly uri: string };
  readonly position: Position;
  readonly range: Range;
}

const USUAL = {
  workspace: { configuration: true, workspaceFolders: true, workspaceEdit: { documentChanges: false } },
  textDocument: {
    completion: { completionItem: { snippetSupport: true } },
    publishDiagnostics: { relatedInformation: true },
  },
};

export async function startSession(options: SessionOptions): Promise<Session> {
  const folder = mkdtempSync(join(tmpdir(), 'baywright-'));
  const uri = (path: string): string => pathToFileURL(join(folder, path)).href;
  const write = (path: string, text: string | undefined): void => {
    const at = join(folder, path);
    mkdirSync(dirname(at), { recursive: true });
    if (text === undefined) rmSync(at);
    else writeFileSync(at, text);
  };
  for (const [path, text] of Object.entries(options.files)) write(path, text);
  const child = spawn(process.execPath, [await serverBundle(), '--stdio'], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const connection = createProtocolConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const published: Session['published'] = [];
  let listeners: (() => void)[] = [];
  let settings = options.settings ?? {};
  connection.onNotification('textDocument/publishDiagnostics', (p: Session['published'][number]) => {
    published.push(p);
    for (const listener of listeners) listener();
  });
  connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) =>
    items.map(() => settings),
  );
  connection.onRequest('client/registerCapability', () => null);
  connection.onRequest('window/workDoneProgress/create', () => null);
  connection.listen();
  const folders = (options.folders ?? ['']).map((name) => ({
    uri: name === '' ? pathToFileURL(folder).href : uri(name),
    name: name || 'shop',
  }));
  const result = await connection.sendRequest<InitializeResult>('initialize', {
    processId: process.pid,
    rootUri: null,
    ...(options.initializationOptions ? { initializationOptions: options.initializationOptions } : {}),
    ...(options.locale === undefined ? {} : { locale: options.locale }),
    workspaceFolders: folders,
    capabilities: {
      ...USUAL,
      ...(options.encodings ? { general: { positionEncodings: options.encodings } } : {}),
      ...options.capabilities,
    },
  });
  await connection.sendNotification('initialized', {});

  const texts = new Map<string, { text: string; version: number }>();
  const at = (path: string) => {
    const found = texts.get(path);
    if (!found) throw new Error(`${path} is not open`);
    return found;
  };
  const waitFor = (test: () => boolean): Promise<void> =>
    new Promise((resolve) => {
      const look = (): void => {
        if (!test()) return;
        listeners = listeners.filter((l) => l !== look);
        resolve();
      };
      listeners.push(look);
      look();
    });
  const last = (path: string) => published.findLast((p) => p.uri === uri(path));
  const session: Session = {
    folder,
    result,
    connection,
    process: child,
    uri,
    published,
    write,
    open(path, given) {
      const { text, cursor } = marked(given ?? options.files[path] ?? '', uri(path));
      texts.set(path, { text, version: 1 });
      void connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri: uri(path), languageId: 'baywright', version: 1, text },
      });
      return cursor;
    },
    rewrite(path, given) {
      const { text, cursor } = marked(given, uri(path));
      const document = at(path);
      document.text = text;
      document.version += 1;
      void connection.sendNotification('textDocument/didChange', {
        textDocument: { uri: uri(path), version: document.version },
        contentChanges: [{ text }],
      });
      return cursor;
    },
    edit(path, range, text) {
      const document = at(path);
      document.text = applied(document.text, [{ range, newText: text }]);
      document.version += 1;
      void connection.sendNotification('textDocument/didChange', {
        textDocument: { uri: uri(path), version: document.version },
        contentChanges: [{ range, text }],
      });
    },
    text: (path) => at(path).text,
    request: (method, params) => connection.sendRequest(method, params),
    async diagnostics(path) {
      await waitFor(() => last(path)?.version === at(path).version);
      return last(path)?.diagnostics ?? [];
    },
    async until(path, test) {
      await waitFor(() => {
        const found = last(path);
        return found !== undefined && test(found.diagnostics);
      });
      return last(path)?.diagnostics ?? [];
    },
    changeSettings(next) {
      settings = next;
      void connection.sendNotification('workspace/didChangeConfiguration', { settings: null });
    },
    async close() {
      await connection.sendRequest('shutdown');
      await connection.sendNotification('exit');
      connection.dispose();
      child.kill();
      rmSync(folder, { recursive: true, force: true });
    },
  };
  return session;
}

/** Takes `$0` out; with two, the range between them. */
function marked(text: string, uri: string): { text: string; cursor: Cursor } {
  const first = text.indexOf('$0');
  const second = first < 0 ? -1 : text.indexOf('$0', first + 2);
  const plain = text.replaceAll('$0', '');
  const start = positionAt(plain, Math.max(0, first));
  const end = second < 0 ? start : positionAt(plain, second - 2);
  return { text: plain, cursor: { textDocument: { uri }, position: start, range: { start, end } } };
}

/** What completion offers in a document with this text, at the mark of the cursor in it. */
export async function offeredAt(session: Session, path: string, text: string): Promise<CompletionItem[]> {
  const cursor = session.rewrite(path, text);
  const list = await session.request<CompletionList | null>('textDocument/completion', cursor);
  return list?.items ?? [];
}

export function positionAt(text: string, offset: number): Position {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
}

function offsetAt(text: string, { line, character }: Position): number {
  const lines = text.split('\n');
  return lines.slice(0, line).reduce((sum, l) => sum + l.length + 1, 0) + character;
}

/** A text after edits of the protocol. */
export function applied(text: string, edits: readonly TextEdit[]): string {
  const sorted = edits
    .map((e, i) => ({ ...e, i, from: offsetAt(text, e.range.start), to: offsetAt(text, e.range.end) }))
    .sort((a, b) => b.from - a.from || b.i - a.i);
  return sorted.reduce((t, e) => t.slice(0, e.from) + e.newText + t.slice(e.to), text);
}

/** The edits of one file in a workspace edit. */
export function editsOf(edit: WorkspaceEdit | null | undefined, uri: string): TextEdit[] {
  return edit?.changes?.[uri] ?? [];
}
