// The sample guides as text, as their readers get them: a change of wording or count shows here.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createLibrary, DIAGNOSTICS, readSettings, type Settings } from '@baywright/language';
import { expect, it } from 'vitest';
import { walkBlocks } from '../../compiler/src/document/blocks.js';
import { type GuideChoice, lowerGuide } from '../../compiler/src/document/lower/index.js';
import { renderHtml } from '../../compiler/src/output.js';
import { pageOutline } from './support.js';

const SAMPLES = fileURLToPath(new URL('../../samples', import.meta.url));

function sample(path: string, choice: Partial<GuideChoice>) {
  const file = (name: string) => {
    try {
      return readFileSync(join(SAMPLES, name));
    } catch {
      return undefined;
    }
  };
  const { settings }: { settings: Settings } = readSettings(
    'baywright.json',
    file('baywright.json')?.toString('utf8') ?? '{}',
    DIAGNOSTICS,
  );
  const library = createLibrary(
    { read: (name) => file(name)?.toString('utf8'), list: () => ['procedures/WH-01-road-wheel.bay'] },
    settings,
  );
  const analysis = library.analyse(path);
  if (!analysis) throw new Error(`${path} is not there`);
  return lowerGuide(
    analysis,
    { sheet: 'guide', option: {}, units: settings.units, language: 'en', ...choice },
    { settings, bytes: file },
  );
}

const GUIDES: readonly [name: string, path: string, choice: Partial<GuideChoice>][] = [
  ['fh-12-left', 'procedures/FH-12-front-hub.bay', { side: 'left' }],
  ['fh-12-both', 'procedures/FH-12-front-hub.bay', {}],
  [
    'hc-17-right-diesel-de',
    'procedures/HC-17-head-cover.bay',
    { side: 'right', option: { engine: 'diesel' }, language: 'de' },
  ],
  ['fd-05', 'procedures/FD-05-final-drive-cover.bay', {}],
  ['bd-31-torque-card', 'procedures/BD-31-timing-belt.bay', { sheet: 'torque-card' }],
  ['bd-31-pull-sheet', 'procedures/BD-31-timing-belt.bay', { sheet: 'pull-sheet' }],
];

it.each(GUIDES)('%s', async (name, path, choice) => {
  const { document, findings } = sample(path, choice);
  expect(findings).toEqual([]);
  await expect(`${pageOutline(renderHtml(document).html)}\n`).toMatchFileSnapshot(
    `golden/sample-${name}.golden.txt`,
  );
});

const PROCEDURES = readdirSync(join(SAMPLES, 'procedures')).filter((name) => name.endsWith('.bay'));
const PRINTS = PROCEDURES.flatMap((name) =>
  [undefined, 'left', 'right'].map((side) => [name, side] as const),
);

it.each(PRINTS)(
  '%s, side %s, ends with nothing off and nothing to torque, and numbers each row once',
  (name, side) => {
    const { document } = sample(`procedures/${name}`, side === undefined ? {} : { side });
    const rows = [...walkBlocks(document.blocks)].flatMap((block) => (block.kind === 'row' ? [block] : []));
    expect(rows.at(-1)?.rail).toEqual({ off: 0, loose: 0 });
    const ids = rows.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    // The page counts by the changes of its rows alone: it must come to the same end.
    const open = new Map(rows.flatMap(({ changes }) => changes).map(({ thing, to }) => [thing, to]));
    expect([...open].filter(([, to]) => to !== 'done')).toEqual([]);
  },
);
