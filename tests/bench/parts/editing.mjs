// Latency while writing: one edit to its findings, debounce included, over the protocol on stdio; Langium in process.
import { join } from 'node:path';
import { edits, session } from '../client.mjs';
import { bay, braces, catalogue, data, procedure, SCHEMA } from '../content.mjs';
import { PEERS } from '../install.mjs';
import { inFolder, median, p95, peer, SERVER } from '../measure.mjs';
import { langium } from '../peers/langium.mjs';

/** Whoever opens a procedure reads before writing, whatever the server: milliseconds to the first edit. */
const READING = 2500;
const reading = () => new Promise((resolve) => setTimeout(resolve, READING));

const YAML_SERVER = join(PEERS, 'node_modules/yaml-language-server/bin/yaml-language-server');

export async function editing({ quick }) {
  return [
    ...(await oneSize('2,000 lines', 2000, quick ? 20 : 60, {
      goal: 30,
      yaml: 0.1,
      langium: 0.5,
      why: 'once in a dozen edits the engine clears its memory, which takes as long again as the edit; the median is the speed of the others. What is left is the run of the work and the checks that need the whole of it, and 2 ms in which a question may come first.',
    })),
    ...(await oneSize('20,000 lines', 20_000, quick ? 4 : 60, {
      goal: 200,
      yaml: 0.4,
      langium: 0.4,
      why: 'of a dozen edits one meets the engine clearing its memory; the others take as long as the median says. The work is run whole after every edit, on all combinations: only a run that goes on from the edited step would do less, and no procedure of this length is known, the longest of the samples has about 300 lines.',
    })),
    ...(await manyOptions(quick ? 10 : 40)),
    ...(await questions(quick ? 20 : 50)),
  ];
}

async function oneSize(name, lines, count, goals) {
  const what = procedure('B-1', lines);
  const own = await ours(what, count);
  const yaml = await yamlServer(what, count);
  const other = await braced(what, Math.min(count, 20));
  return [
    {
      work: `one edit → findings, ${name}, p95`,
      note: `median ${median(own.times).toFixed(1)}`,
      why: goals.why,
      ours: p95(own.times),
      unit: 'ms',
      goal: goals.goal,
      peers: [
        { name: 'yaml-language-server', value: p95(yaml.times), goal: goals.yaml },
        { name: 'Langium, braces', value: p95(other.times), goal: goals.langium },
      ],
    },
    {
      work: `cold open → findings, ${name}, process included`,
      ours: own.open,
      unit: 'ms',
      peers: [
        { name: 'yaml-language-server', value: yaml.open },
        { name: 'Langium in process', value: other.open },
      ],
    },
    {
      work: `server memory, ${name} open`,
      ours: own.memory,
      unit: 'MB',
      peers: [{ name: 'yaml-language-server', value: yaml.memory }],
    },
  ];
}

const files = (what, options = 0) => ({
  'baywright.json': '{}',
  'catalogue.bay': catalogue(options),
  'job.bay': bay(what),
});

/** A place late in a text, behind the words of a statement. */
function late(text, word) {
  const lines = text.split('\n');
  const line = lines.findIndex((l, i) => i > lines.length * 0.8 && l.includes(word));
  return { line, character: lines[line]?.length ?? 0 };
}

function ours(what, count, options = 0) {
  return inFolder(files(what, options), async (folder) => {
    const client = await session([SERVER], folder);
    const open = (await client.open('job.bay')) - client.begin;
    await reading();
    const times = await edits(client, 'job.bay', late(bay(what), 'install'), count);
    const memory = client.resident();
    await client.close();
    return { open, times, memory };
  });
}

async function yamlServer(what, count) {
  const { dump } = (({ dump, default: whole }) => ({ dump: dump ?? whole.dump }))(await peer('js-yaml'));
  const text = dump(data(what));
  return inFolder({ 'job.yaml': text, 'schema.json': JSON.stringify(SCHEMA) }, async (folder) => {
    const settings = (section) =>
      section === 'yaml' ? { validate: true, schemas: { [join(folder, 'schema.json')]: '*.yaml' } } : {};
    const client = await session([YAML_SERVER], folder, { language: 'yaml', settings, versions: false });
    const open = (await client.open('job.yaml')) - client.begin;
    await reading();
    const times = await edits(client, 'job.yaml', late(text, 'step:'), Math.min(count, 20));
    const memory = client.resident();
    await client.close();
    return { open, times, memory };
  });
}

async function braced(what, count) {
  const text = braces(what);
  const language = await langium();
  const begin = performance.now();
  let document = await language.open(text);
  const open = performance.now() - begin;
  const times = [];
  for (let i = 0; i < count + 8; i++) {
    const edited = text.replace('"Fit part 3"', `"Fit part 3 ${i}"`);
    const start = performance.now();
    document = await language.replace(document, edited);
    if (i >= 8) times.push(performance.now() - start);
  }
  return { open, times };
}

async function manyOptions(count) {
  const { times } = await ours(procedure('B-2', 1660, 20), count, 20);
  return [
    {
      work: 'one edit → findings, 20 two-valued options, 300 steps, p95',
      ours: p95(times),
      unit: 'ms',
      goal: 100,
      peers: [],
    },
  ];
}

/** Completion, hover and definition straight after an edit of the same line. */
function questions(count) {
  const what = procedure('B-1', 2000);
  return inFolder(files(what), async (folder) => {
    const client = await session([SERVER], folder);
    await client.open('job.bay');
    await reading();
    const { line, character } = late(bay(what), 'install');
    const rows = [];
    for (const [method, name, at] of [
      ['textDocument/completion', 'completion', 12],
      ['textDocument/hover', 'hover', 14],
      ['textDocument/definition', 'definition', 14],
    ]) {
      const times = [];
      for (let i = 0; i < count + 6; i++) {
        const end = { line, character: character + (i % 2) };
        client.edit('job.bay', { start: { line, character }, end }, i % 2 === 0 ? ' ' : '');
        const begin = performance.now();
        await client.ask(method, 'job.bay', { line, character: at });
        if (i >= 6) times.push(performance.now() - begin);
        await new Promise((resolve) => setTimeout(resolve, 30));
      }
      rows.push({
        work: `${name}, 2,000 lines, dirty, p95`,
        ours: p95(times),
        unit: 'ms',
        goal: 20,
        peers: [],
        note: `median ${median(times).toFixed(1)}`,
        why: 'the first questions run before the engine has compiled what answers them; the median is the speed after them.',
      });
    }
    await client.close();
    return rows;
  });
}
