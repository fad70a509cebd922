// A library of 1,000 procedures: the command on it, and the server over it.
import { appendFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { session } from '../client.mjs';
import { bay, catalogue, data, procedure } from '../content.mjs';
import { COMMAND, inFolder, median, peer, program, programMedian, SERVER, watched } from '../measure.mjs';

const CHECK_FILES = fileURLToPath(new URL('../peers/check-files.mjs', import.meta.url));
const LINES = 150;

export async function library({ quick }) {
  const count = quick ? 200 : 1000;
  const times = quick ? 1 : 3;
  return [
    ...(await command(count, times)),
    ...(await oneFile(quick ? 3 : 9)),
    ...(await server(count, quick)),
  ];
}

/** Files of the library; those from `others` on use another catalogue. */
function texts(count, others = count) {
  const files = {
    'baywright.json': '{}',
    'catalogue.bay': catalogue(),
    'other.bay': catalogue(0, 'Other van'),
  };
  for (let i = 0; i < count; i++)
    files[`job-${i}.bay`] = bay(procedure(`B-${i}`, LINES), i < others ? 'catalogue.bay' : 'other.bay');
  return files;
}

async function command(count, times) {
  const { dump } = (({ dump, default: whole }) => ({ dump: dump ?? whole.dump }))(await peer('js-yaml'));
  const all = Array.from({ length: count }, (_, i) => data(procedure(`B-${i}`, LINES)));
  const named = (suffix, text) => Object.fromEntries(all.map((d, i) => [`job-${i}.${suffix}`, text(d)]));
  const peers = await inFolder(named('yaml', dump), (yaml) =>
    inFolder(
      named('json', (d) => JSON.stringify(d)),
      (json) => [
        { name: 'js-yaml + ajv', value: programMedian(times, [CHECK_FILES, yaml, 'js-yaml']), goal: 0.8 },
        { name: 'yaml + ajv', value: programMedian(1, [CHECK_FILES, yaml, 'yaml']) },
        { name: 'JSON.parse + ajv', value: programMedian(times, [CHECK_FILES, json, 'json']) },
      ],
    ),
  );
  return inFolder(texts(count), async (folder) => {
    const check = (...more) => [COMMAND, 'check', folder, ...more];
    const cold = programMedian(times, check('--fresh'));
    const { megabytes } = await watched(check('--fresh'));
    const name = count.toLocaleString('en');
    // What the warm runs below start from.
    program(check());
    const warm = [];
    for (let i = 0; i < times; i++) {
      appendFileSync(join(folder, 'job-7.bay'), `# ${i}\n`);
      warm.push(program(check()));
    }
    return [
      {
        work: `${name} procedures of ${LINES} lines checked, cold process`,
        ours: cold,
        unit: 'ms',
        peers,
        note: `up to ${megabytes.toFixed(0)} MB`,
        why: 'js-yaml and JSON.parse hand over values without the places an editor needs, and the schema looks at shape alone. Reading our lines into a tree already takes longer than that; names, state, rules, figures and wording take as long again twice. `yaml`, which keeps places, is the fairer peer.',
      },
      {
        work: `the same, ${name} kept findings, one file changed`,
        ours: median(warm),
        unit: 'ms',
        goal: 300,
        why: 'most of it is the start of the program, then the look at a thousand files.',
        peers: [],
      },
    ];
  });
}

function oneFile(times) {
  return inFolder(texts(3), (folder) => [
    {
      work: 'check of one file, cold process',
      ours: programMedian(times, [COMMAND, 'check', '--fresh', join(folder, 'job-1.bay')]),
      unit: 'ms',
      goal: 200,
      why: 'the start of the program: its tables and its grammar are made anew in each process.',
      peers: [{ name: 'an empty Node process', value: programMedian(times, ['-e', '0']) }],
    },
  ]);
}

/** The server over the library: an edit of a catalogue that 200 files use, and its memory over many edits. */
function server(count, quick) {
  const touched = Math.min(200, count);
  return inFolder(texts(count, touched), async (folder) => {
    const client = await session([SERVER], folder);
    const checked = () =>
      new Promise((resolve) =>
        client.connection.onNotification('baywright/libraryChanged', () => resolve(performance.now())),
      );
    const cold = (await checked()) - client.begin;
    await client.open('job-1.bay');
    await client.open('catalogue.bay');
    const open = [];
    const whole = [];
    for (let i = 0; i < 6; i++) {
      const all = checked();
      const one = client.answered('job-1.bay');
      const begin = performance.now();
      client.edit(
        'catalogue.bay',
        { start: { line: 4, character: 0 }, end: { line: 4, character: 0 } },
        `  S-${i + 9}: Sheet\n`,
      );
      open.push((await one) - begin);
      whole.push((await all) - begin);
    }
    const rounds = quick ? 1000 : Number(process.env.ROUNDS ?? 10_000);
    const memory = [client.resident()];
    for (let i = 0; i < rounds; i++) {
      const end = { line: 40, character: i % 2 };
      await client.edit('job-1.bay', { start: { line: 40, character: 0 }, end }, i % 2 === 0 ? '#' : '');
      if ((i + 1) % (rounds / 5) === 0) memory.push(client.resident());
    }
    await client.close();
    const name = count.toLocaleString('en');
    return [
      { work: `server started on ${name} files → all findings`, ours: cold, unit: 'ms', peers: [] },
      {
        work: `catalogue edit that touches ${touched} files → an open one`,
        ours: median(open),
        unit: 'ms',
        goal: 100,
        peers: [],
      },
      {
        work: `catalogue edit that touches ${touched} files → all of them`,
        ours: median(whole),
        unit: 'ms',
        goal: 1500,
        peers: [],
      },
      {
        work: `server memory, ${name} files, after ${rounds.toLocaleString('en')} edits`,
        ours: memory.at(-1) ?? Number.NaN,
        unit: 'MB',
        goal: 200,
        peers: [],
        note: memory.map((m) => m.toFixed(0)).join(' → '),
      },
    ];
  });
}
