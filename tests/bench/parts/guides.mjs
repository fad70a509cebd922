// Guides: HTML of a library, one PDF cold and warm, and PDFs in a row.

import { spawnSync } from 'node:child_process';
import { appendFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { asciidoc, bay, catalogue, longJob, markdown, procedure } from '../content.mjs';
import { COMMAND, inFolder, median, program, programMedian, watched } from '../measure.mjs';

const at = (name) => fileURLToPath(new URL(`../peers/${name}.mjs`, import.meta.url));
const LINES = 150;
/** Lines of a guide of about six pages; the peers' six pages, which tell less, take the lines in their programs. */
const SIX_PAGES = 140;

export async function guides({ quick }) {
  return [
    ...(await pages(quick ? 100 : 1000)),
    ...(await onePdf(quick ? 3 : 7)),
    ...(await longest(quick ? 1 : 3)),
    ...(await manyPdfs(quick ? 20 : 1000)),
  ];
}

const named = (count, suffix, write, lines = LINES) =>
  Object.fromEntries(
    Array.from({ length: count }, (_, i) => [`job-${i}.${suffix}`, write(procedure(`B-${i}`, lines))]),
  );
const sources = (count, lines) => ({
  'baywright.json': '{}',
  'catalogue.bay': catalogue(),
  ...named(count, 'bay', (what) => bay(what), lines),
});

async function pages(count) {
  const peers = await inFolder(named(count, 'md', markdown), (md) =>
    inFolder(named(count, 'adoc', asciidoc), (adoc) => [
      {
        name: 'markdown-it',
        value: programMedian(1, [at('pages'), md, join(md, 'out'), 'markdown-it']),
        goal: 1,
      },
      { name: 'Asciidoctor', value: programMedian(1, [at('pages'), adoc, join(adoc, 'out'), 'asciidoctor']) },
    ]),
  );
  return inFolder(sources(count), async (folder) => {
    const build = [COMMAND, 'build', folder, '--format', 'html', '--out', join(folder, 'out')];
    const { ms, megabytes } = await watched(build);
    const again = [0, 1, 2].map((i) => {
      appendFileSync(join(folder, 'job-7.bay'), `# ${i}\n`);
      return program(build);
    });
    const name = count.toLocaleString('en');
    return [
      {
        work: `${name} procedures → HTML, checked, cold process`,
        ours: ms,
        unit: 'ms',
        peers,
        note: `up to ${megabytes.toFixed(0)} MB`,
        why: 'the peers turn a text into a tenth of the page and check nothing. Reading, checking and working out what the job needs take about half, the page of some 170 kB with its tick boxes and clocks the other half.',
      },
      {
        work: `the same, ${name} kept guides, one procedure changed`,
        ours: median(again),
        unit: 'ms',
        peers: peers.slice(0, 1),
      },
    ];
  });
}

async function onePdf(times) {
  const cold = programMedian(Math.min(times, 3), [at('pdfmake')]);
  const warm = Number(JSON.parse(run([at('pdfmake'), '12'])).ms);
  const browser = JSON.parse(run([at('chromium'), '8']));
  return inFolder(sources(1, SIX_PAGES), async (folder) => {
    const own = programMedian(times, [
      COMMAND,
      'build',
      join(folder, 'job-0.bay'),
      '--fresh',
      '--format',
      'pdf',
      '--out',
      join(folder, 'out'),
    ]);
    const inside = JSON.parse(
      run([fileURLToPath(new URL('../print-warm.mjs', import.meta.url)), folder, '12']),
    );
    return [
      {
        work: 'guide of about six pages → PDF, cold process',
        ours: own,
        unit: 'ms',
        goal: 300,
        why: 'the program and the typesetter start, and what they run is compiled in each process anew: half of it is the check and the plan of the pages.',
        peers: [
          { name: 'pdfmake', value: cold },
          { name: 'Chromium', value: browser.cold, goal: 0.25 },
        ],
      },
      {
        work: 'the same, warm',
        ours: inside.ms,
        unit: 'ms',
        goal: 60,
        why: 'a page is some hundred texts in their places, each a paragraph that readers hear apart.',
        peers: [
          { name: 'pdfmake', value: warm },
          { name: 'Chromium', value: browser.warm },
        ],
        note: `${inside.pages} pages`,
      },
    ];
  });
}

/** Steps of the longest procedure; 60 of its parts have fasteners of their own. */
const MOST_STEPS = 400;

/** The same work in an ever longer run would show here: a page must not take longer than one of six. */
function longest(times) {
  const files = { ...sources(0, 0), 'job-0.bay': longJob('L-1', MOST_STEPS) };
  return inFolder(files, (folder) => {
    const build = (format) => [
      COMMAND,
      'build',
      join(folder, 'job-0.bay'),
      '--fresh',
      '--format',
      format,
      '--out',
      join(folder, 'out'),
    ];
    const html = programMedian(times, build('html'));
    const pdf = programMedian(times, build('pdf'));
    const pages = Number(/\((\d+) pages\)/.exec(output(build('pdf')))?.[1]);
    return [
      {
        work: `guide of ${MOST_STEPS} steps and 60 fasteners → HTML, cold process`,
        ours: html,
        unit: 'ms',
        peers: [],
      },
      {
        work: `the same → PDF, cold process (${pages} pages, ${(pdf / pages).toFixed(0)} ms each)`,
        ours: pdf,
        unit: 'ms',
        peers: [],
      },
    ];
  });
}

function manyPdfs(count) {
  return inFolder(sources(count, SIX_PAGES), async (folder) => {
    const { ms, megabytes } = await watched([
      COMMAND,
      'build',
      folder,
      '--format',
      'pdf',
      '--out',
      join(folder, 'out'),
    ]);
    return [
      {
        work: `PDFs per second, ${count.toLocaleString('en')} guides, checks and process included`,
        ours: count / (ms / 1000),
        unit: '/s',
        goal: 40,
        why: 'a third is the check, the sentences and the plan of the pages, which one thread works out; the rest is the typesetter: lists and tables that readers can walk, and their tags. The start of the program is in it.',
        more: true,
        peers: [],
      },
      {
        work: 'memory of that, all processes together',
        ours: megabytes,
        unit: 'MB',
        goal: 600,
        peers: [],
        why: 'two typesetters with their fonts and the threads that check.',
      },
    ];
  });
}

/** The last line that a program prints. */
const run = (args) => output(args).split('\n').at(-1) ?? '';

function output(args) {
  const { stdout, status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}\n${stderr}`);
  return stdout.trim();
}
