// Change bars from kept issues: an edition is issued, its catalogue and a line are edited, and the guides that are
// built and issued next have their bars there and nowhere else.
import { describe, expect, it } from 'vitest';
import { SHOP } from './desk.js';
import { baywright, type FakeWorld, type Ran } from './fake-shell.js';

const then = (ran: Ran, changes: Readonly<Record<string, string>> = {}): FakeWorld => ({
  files: Object.fromEntries([...ran.files, ...Object.entries(changes)]),
});

const page = ({ files }: Ran, path: string): string => {
  const text = files.get(path);
  if (text === undefined) throw new Error(`${path} was not written`);
  return String(text);
};

/** The lines of a page that carry a bar, by their number. */
const bars = (ran: Ran, path: string): string[] =>
  [...page(ran, path).matchAll(/<li class="[^"]*\brevised\b[^"]*" id="r([\d-]+)"/g)].map(([, id = '']) =>
    id.replace('-', '.'),
  );

const where = (ran: Ran, path: string): string =>
  /<table class="revisions">[\s\S]*?<tr>([\s\S]*?)<\/tr>[\s\S]*?<tr>([\s\S]*?)<\/tr>/
    .exec(page(ran, path))?.[2]
    ?.split('</td>')
    .map((cell) => cell.replace(/<[^>]+>/g, ''))
    .at(3) ?? '';

const raised = (SHOP['M-1.bay'] ?? '')
  .replace('revision 1', 'revision 2 on 2026-10-05: Mirror bolts by the new sheet.\nrevision 1')
  .replace('    install door-mirror, mirror-bolt\n', '    install door-mirror, mirror-bolt: Lead first.\n');
const EDITS = {
  'M-1.bay': raised,
  'catalogue/mirrors.bay': (SHOP['catalogue/mirrors.bay'] ?? '').replace('torque 9 N·m', 'torque 8 N·m'),
};

describe('change bars', () => {
  it('are where the guide differs from the issue before, and the table of revisions says where', async () => {
    const issued = await baywright('issue M-1', { files: SHOP });
    expect(issued.code).toBe(0);
    expect(bars(issued, 'issued/M-1/1/guide.html')).toEqual([]);
    const built = await baywright('build M-1.bay --format html', then(issued, EDITS));
    expect(bars(built, 'out/M-1.html')).toEqual(['2.1', '2.3']);
    expect(where(built, 'out/M-1.html')).toBe('2.1, 2.3');
    const again = await baywright('issue M-1', then(issued, EDITS));
    expect(again.code).toBe(0);
    expect(bars(again, 'issued/M-1/2/guide.html')).toEqual(['2.1', '2.3']);
    // Printed once more, the second issue is still compared with the first.
    const reprint = await baywright('build M-1.bay --format html', then(again));
    expect(bars(reprint, 'out/M-1.html')).toEqual(['2.1', '2.3']);
  });

  it('are on an exchanged picture, also where no revision was raised for it, and not on one that moved', async () => {
    const drawing = (width: number): string =>
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 40"><path d="M0 0h40" stroke="#000" stroke-width="${width}"/></svg>`;
    const shown = (path: string, text = SHOP['M-1.bay'] ?? ''): string =>
      text.replace('    remove ', `    picture "${path}": A is the upper bolt.\n    remove `);
    const files = { ...SHOP, 'M-1.bay': shown('bolts.svg'), 'bolts.svg': drawing(1) };
    const issued = await baywright('issue M-1', { files });
    const figures = (ran: Ran): number =>
      [...page(ran, 'out/M-1.html').matchAll(/<div class="row remark [^"]*\brevised\b[^"]*"[^>]*><figure/g)]
        .length;
    const build = 'build M-1.bay --format html';
    expect(figures(await baywright(build, then(issued)))).toBe(0);
    expect(figures(await baywright(build, then(issued, { 'bolts.svg': drawing(4) })))).toBe(1);
    const moved = { 'M-1.bay': shown('pictures/bolts.svg', raised), 'pictures/bolts.svg': drawing(1) };
    const built = await baywright(build, then(issued, moved));
    expect([figures(built), bars(built, 'out/M-1.html')]).toEqual([0, ['2.1']]);
  });

  it('are on what reads otherwise in the language of the print', async () => {
    const po = (words: string): string => `msgid "Door mirror"\nmsgstr "${words}"\n`;
    const files = { ...SHOP, 'baywright.json': '{ "languages": ["en", "de"] }' };
    const german = { ...files, 'catalogue/mirrors.de.po': po('Spiegel') };
    const issued = await baywright('issue M-1', { files: german });
    const build = 'build M-1.bay --format html';
    const same = await baywright(build, then(issued));
    expect([bars(same, 'out/M-1.html'), bars(same, 'out/M-1.de.html')]).toEqual([[], []]);
    const right = await baywright(build, then(issued, { 'catalogue/mirrors.de.po': po('Außenspiegel') }));
    expect([bars(right, 'out/M-1.html'), bars(right, 'out/M-1.de.html')]).toEqual([[], ['1.2', '2.1']]);
    // Of an issue without translations the two texts are compared as they are written.
    const older = await baywright('issue M-1', { files });
    const first = await baywright(build, then(older, { 'catalogue/mirrors.de.po': po('Spiegel') }));
    expect(bars(first, 'out/M-1.de.html')).toEqual([]);
  });

  it('are nowhere where nothing was issued', async () => {
    const built = await baywright('build M-1.bay --format html', { files: { ...SHOP, ...EDITS } });
    expect(bars(built, 'out/M-1.html')).toEqual([]);
    expect(where(built, 'out/M-1.html')).toBe('');
  });
});
