// The sample guides as text, as their readers get them: a change of wording or count shows here.
import { expect, it } from 'vitest';
import { walkBlocks } from '../../compiler/src/document/blocks.js';
import type { GuideChoice } from '../../compiler/src/document/lower/index.js';
import { renderHtml } from '../../compiler/src/output.js';
import { openSamples } from './sample-guides.js';
import { pageOutline } from './support.js';

const { lower: sample, procedures: PROCEDURES } = openSamples();

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
