// Latency and memory of the language server, asked over the protocol by a client on stdio; prints p50 and p95.
//   node tests/bench/server/latency.mjs [--quick] [--only=short|long|options|library]      (after `npm run build`)
// Synthetic content; the goals are those of the project's measures.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import {
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';

const SERVER = fileURLToPath(new URL('../../../server/dist/node.js', import.meta.url));
const quick = process.argv.includes('--quick');

/** A procedure of about `lines` lines: groups of a part with its bolts, taken off and put back. */
function procedure(number, lines, options = 0) {
  const groups = Math.max(1, Math.round((lines - 12) / 11));
  const parts = [];
  const bolts = [];
  const off = [];
  const on = [];
  for (let i = 0; i < groups; i++) {
    parts.push(`  part-${i}: Part ${i}`, `    held by bolt-${i}`);
    bolts.push(
      `  bolt-${i}: Bolts of part ${i}`,
      '    4 of M8x1.25, class 8.8, hex 13 mm',
      '    torque 25 N·m, per "S-1"',
    );
    const when = options > 0 ? `, when option-${i % options} yes` : '';
    off.push(`  step: Take part ${i} off`, `    remove bolt-${i}, part-${i}${when}`);
    on.push(
      `  step: Fit part ${i}`,
      `    install part-${i}, bolt-${i}${when}`,
      `    torque bolt-${i}${when}`,
    );
  }
  return [
    `procedure ${number}: Synthetic job`,
    '',
    'use "catalogue.bay"',
    '',
    'applies to van',
    'labour 1 h',
    '',
    'parts',
    ...parts,
    '',
    'fasteners',
    ...bolts,
    '',
    'removal',
    ...off,
    '',
    'installation',
    ...on,
    '',
  ].join('\n');
}

function catalogue(options = 0) {
  const list = Array.from({ length: options }, (_, i) => `    option option-${i} yes, no`);
  return [
    'catalogue: Synthetic van',
    '',
    'sources',
    '  S-1: Sheet 1',
    '',
    'vehicles',
    '  van: Van',
    '    years 2018 to 2025',
    ...list,
    '',
    'places',
    '  rear-wheels: Rear wheels',
    '',
  ].join('\n');
}

async function session(files) {
  const folder = mkdtempSync(join(tmpdir(), 'baywright-bench-'));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  const child = spawn(process.execPath, ['--expose-gc', SERVER, '--stdio'], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const connection = createProtocolConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const waiting = new Map();
  const counts = { published: 0 };
  connection.onNotification('textDocument/publishDiagnostics', ({ uri, version }) => {
    counts.published += 1;
    const key = version === undefined ? uri : `${uri}@${version}`;
    waiting.get(key)?.(performance.now());
    waiting.get('any')?.(uri);
  });
  connection.onRequest('workspace/configuration', ({ items }) => items.map(() => ({})));
  connection.onRequest('window/workDoneProgress/create', () => null);
  connection.onRequest('client/registerCapability', () => null);
  connection.listen();
  const begin = performance.now();
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: null,
    workspaceFolders: [{ uri: pathToFileURL(folder).href, name: 'x' }],
    capabilities: { workspace: { configuration: true } },
  });
  await connection.sendNotification('initialized', {});
  const versions = new Map();
  const uri = (path) => pathToFileURL(join(folder, path)).href;
  const answered = (path) =>
    new Promise((resolve) => waiting.set(`${uri(path)}@${versions.get(path)}`, resolve));
  return {
    begin,
    uri,
    counts,
    waiting,
    connection,
    async open(path) {
      versions.set(path, 1);
      const done = answered(path);
      await connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri: uri(path), languageId: 'baywright', version: 1, text: files[path] },
      });
      return done;
    },
    edit(path, range, text) {
      versions.set(path, versions.get(path) + 1);
      const done = answered(path);
      connection.sendNotification('textDocument/didChange', {
        textDocument: { uri: uri(path), version: versions.get(path) },
        contentChanges: [{ range, text }],
      });
      return done;
    },
    rss: () =>
      Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))?.[1] ?? 0) / 1024,
    async close() {
      await connection.sendRequest('shutdown');
      await connection.sendNotification('exit');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

const rows = [];
function row(work, times, goal) {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))].toFixed(1);
  rows.push([work, at(0.5), at(0.95), goal]);
  console.log(`${work.padEnd(62)} p50 ${at(0.5).padStart(8)}   p95 ${at(0.95).padStart(8)}   ${goal}`);
}

async function edits(name, lines, goal, count, options = 0) {
  const files = {
    'baywright.json': '{}',
    'catalogue.bay': catalogue(options),
    'job.bay': procedure('B-1', lines, options),
  };
  const s = await session(files);
  row(`cold open, ${name}`, [(await s.open('job.bay')) - s.begin], 'ms');
  const text = files['job.bay'].split('\n');
  const line = Math.floor(text.length * 0.8);
  const column = text[line].length;
  const times = [];
  // A run-in, then edits at the pace of fast typing.
  for (let i = 0; i < count + 10; i++) {
    const begin = performance.now();
    const range =
      i % 2 === 0
        ? { start: { line, character: column }, end: { line, character: column } }
        : { start: { line, character: column }, end: { line, character: column + 3 } };
    const done = await s.edit('job.bay', range, i % 2 === 0 ? ', x' : '');
    if (i >= 10) times.push(done - begin);
  }
  row(`edit → findings, ${name}`, times, goal);
  if (lines === 2000 && options === 0) await requests(s, text);
  await s.close();
}

async function requests(s, text) {
  const ask = async (method, position) => {
    const begin = performance.now();
    await s.connection.sendRequest(method, { textDocument: { uri: s.uri('job.bay') }, position });
    return performance.now() - begin;
  };
  const removal = text.findIndex((l, i) => i > text.indexOf('removal') + 40 && l.includes('remove'));
  for (const [method, name] of [
    ['textDocument/completion', 'completion'],
    ['textDocument/hover', 'hover'],
    ['textDocument/definition', 'definition'],
  ]) {
    const times = [];
    for (let i = 0; i < 60; i++) {
      // The file is dirty: an edit goes just before each request, on the same line.
      const end = 4 + 'remove '.length;
      const length = text[removal].length;
      s.edit(
        'job.bay',
        {
          start: { line: removal, character: length + (i % 2) - (i % 2) },
          end: { line: removal, character: length + (i % 2) },
        },
        i % 2 === 0 ? ' ' : '',
      );
      times.push(
        await ask(method, { line: removal, character: end + (method === 'textDocument/completion' ? 0 : 2) }),
      );
      await new Promise((r) => setTimeout(r, 30));
    }
    row(`${name}, 2,000 lines, dirty`, times.slice(5), '≤ 20 ms p95');
  }
}

async function library(files) {
  const all = { 'baywright.json': '{}', 'catalogue.bay': catalogue() };
  for (let i = 0; i < files; i++)
    all[`job-${i}.bay`] = procedure(`B-${i}`, 150).replace(
      'use "catalogue.bay"',
      i < 200 ? 'use "catalogue.bay"' : 'use "other.bay"',
    );
  all['other.bay'] = catalogue().replace('Synthetic van', 'Other van');
  const s = await session(all);
  let checked = new Promise((resolve) =>
    s.connection.onNotification('baywright/libraryChanged', () => resolve(performance.now())),
  );
  row(`${files} files, cold, whole library`, [(await checked) - s.begin], 'ms');
  await s.open('job-1.bay');
  await s.open('catalogue.bay');
  const times = [];
  const whole = [];
  for (let i = 0; i < 8; i++) {
    checked = new Promise((resolve) =>
      s.connection.onNotification('baywright/libraryChanged', () => resolve(performance.now())),
    );
    const dependent = new Promise((resolve) => s.waiting.set(`${s.uri('job-1.bay')}@1`, resolve));
    const begin = performance.now();
    s.edit(
      'catalogue.bay',
      { start: { line: 4, character: 0 }, end: { line: 4, character: 0 } },
      '  S-9: Sheet 9\n',
    );
    times.push((await dependent) - begin);
    whole.push((await checked) - begin);
  }
  row('catalogue edit that touches 200 files → an open one', times, '≤ 100 ms');
  row('catalogue edit that touches 200 files → all of them', whole, '≤ 1,500 ms');
  const before = s.rss();
  const line = 40;
  const memory = [before];
  const rounds = quick ? 1000 : Number(process.env.ROUNDS ?? 10_000);
  for (let i = 0; i < rounds; i++) {
    await s.edit(
      'job-1.bay',
      { start: { line, character: 0 }, end: { line, character: i % 2 } },
      i % 2 === 0 ? '#' : '',
    );
    if (i % (rounds / 5) === rounds / 5 - 1) memory.push(s.rss());
  }
  console.log(
    `RSS in MB, ${files} files, over ${rounds} edits: ${memory.map((m) => m.toFixed(0)).join(' ')}   goal ≤ 200, slope 0`,
  );
  await s.close();
}

const only = process.argv.find((a) => a.startsWith('--only='))?.slice(7);
const parts = {
  short: () => edits('2,000 lines', 2000, '≤ 30 ms p95', quick ? 30 : 100),
  long: () => edits('20,000 lines', 20_000, '≤ 200 ms p95', quick ? 6 : 20),
  options: () => edits('20 options, 300 steps', 1650, '≤ 100 ms p95', quick ? 10 : 40, 20),
  library: () => library(quick ? 250 : 1000),
};
for (const [name, part] of Object.entries(parts)) if (only === undefined || only === name) await part();
