// Thousands of random edits: what the server says along the way is what a server says that has just been started on
// the same text. Edits cut, double, swap and garble pieces of a procedure and of the catalogue it uses.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createLibrary, DEFAULT_SETTINGS, libraryFindings, stateAt } from '../../language/src/index.js';
import { Checker } from '../../server/src/checker.js';
import { cursorAt } from '../../server/src/features/completion/cursor.js';
import { offersAt } from '../../server/src/features/completion.js';
import { diagnosticsOf } from '../../server/src/features/diagnostics.js';
import { memoryFiles } from '../../server/src/files.js';
import { Workspace } from '../../server/src/workspace.js';
import { positionAt } from './session.js';
import { CATALOGUE, HEAD, PATH, shop } from './shop.js';

const ROOT = 'file:///shop/';
const WORK = `${HEAD}    remove wheel-nut, wheel\n    remove caliper-bolt, caliper, disc\n\ninstallation\n  step: Fit\n    install disc, caliper, caliper-bolt\n    torque caliper-bolt\n    install wheel, wheel-nut\n    snug wheel-nut\n    lower vehicle\n    torque wheel-nut\n    unchock rear-wheels\n`;
const FILES = [PATH, 'catalogue/van.bay'] as const;
const PIECES = [
  '\n',
  '    remove wheel\n',
  '  step: More\n',
  ', ',
  'wheel-nut',
  ' when axle heavy',
  '115 N·m',
  ': ',
  '"',
  '#',
  '  ',
  'otherwise',
  '{wheel-nut torque}',
  '🔧',
  'torque ?',
  '\r\n',
  'parts\n  extra: Extra\n',
];

const edit = fc.record({
  file: fc.constantFrom(...FILES),
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.integer({ min: 0, max: 25 }),
  piece: fc.oneof(fc.constantFrom(...PIECES), fc.string({ maxLength: 3 }), fc.constant('')),
});

function start(texts: ReadonlyMap<string, string>): Promise<Workspace> {
  const workspace = new Workspace(memoryFiles(texts));
  workspace.addFolder(ROOT);
  return workspace.ready.then(() => workspace);
}

const told = (workspace: Workspace, path: string): unknown => {
  const snapshot = workspace.snapshot(ROOT + path);
  return snapshot && diagnosticsOf(snapshot, snapshot.analysis().findings);
};

describe('incremental answers are those of a fresh start', () => {
  test('diagnostics, state and completions', async () => {
    let edits = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.array(edit, { minLength: 20, maxLength: 60 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        async (list, where) => {
          const files = new Map(Object.entries(shop(WORK)).map(([path, text]) => [ROOT + path, text]));
          const workspace = await start(files);
          const texts = new Map<string, string>([
            [PATH, WORK],
            ['catalogue/van.bay', CATALOGUE],
          ]);
          for (const path of FILES) workspace.open(ROOT + path, 1, texts.get(path) ?? '');
          await workspace.ready;
          let version = 1;
          for (const { file, at, length, piece } of list) {
            edits += 1;
            version += 1;
            const text = texts.get(file) ?? '';
            let from = Math.floor(at * text.length);
            let to = Math.min(text.length, from + length);
            // Editors do not cut a pair of units, nor a line end, in two.
            while (from > 0 && /[\uDC00-\uDFFF\n]/.test(text[from] ?? '')) from--;
            while (to < text.length && /[\uDC00-\uDFFF\n]/.test(text[to] ?? '')) to++;
            workspace.change(ROOT + file, version, [
              { range: { start: lspPosition(text, from), end: lspPosition(text, to) }, text: piece },
            ]);
            texts.set(file, text.slice(0, from) + piece + text.slice(to));
            const snapshot = workspace.snapshot(ROOT + PATH);
            if (version % 3 === 0 && snapshot) workspace.remember(ROOT + PATH, snapshot.analysis());
          }
          for (const path of FILES) expect(workspace.text(ROOT + path)).toBe(texts.get(path));
          const now = new Map([...files, ...[...texts].map(([path, text]) => [ROOT + path, text] as const)]);
          const fresh = await start(now);
          // First what may rest on an earlier analysis, before asking for findings makes a new one.
          compareAt(workspace, fresh, Math.floor(where * (texts.get(PATH)?.length ?? 0)));
          for (const path of FILES) expect(told(workspace, path)).toEqual(told(fresh, path));
        },
      ),
      { numRuns: 120, seed: 20_261_005 },
    );
    expect(edits).toBeGreaterThan(3000);
  });

  test('what can be done at a line, asked straight after edits', async () => {
    const lines = WORK.split('\n');
    const first = lines.indexOf('removal');
    const near = fc.record({
      below: fc.integer({ min: -2, max: 8 }),
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      length: fc.integer({ min: 0, max: 12 }),
      piece: edit.map(({ piece }) => piece),
    });
    let standing = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.array(near, { minLength: 1, maxLength: 2 }),
        fc.integer({ min: first + 1, max: lines.length - 1 }),
        fc.constantFrom('remove', 'install', 'torque', 'loosen'),
        async (list, line, verb) => {
          const files = new Map(Object.entries(shop(WORK)).map(([path, text]) => [ROOT + path, text]));
          const workspace = await start(files);
          workspace.open(ROOT + PATH, 1, WORK);
          await workspace.ready;
          workspace.snapshot(ROOT + PATH)?.analysis();
          let text = WORK;
          const change = (from: number, to: number, piece: string): void => {
            const range = { start: lspPosition(text, from), end: lspPosition(text, to) };
            workspace.change(ROOT + PATH, 2, [{ range, text: piece }]);
            text = text.slice(0, from) + piece + text.slice(to);
          };
          const startOf = (n: number): number => {
            const all = text.split('\n');
            return all.slice(0, Math.min(n, all.length - 1)).join('\n').length + 1;
          };
          for (const { below, at, length, piece } of list) {
            const on = line + below;
            const from = Math.min(text.length, startOf(on) + Math.floor(at * (lines[on]?.length ?? 0)));
            change(from, Math.min(text.length, from + length), piece.replaceAll('\r', ''));
          }
          const place = Math.min(text.length, startOf(line));
          const typed = `    ${verb} `;
          change(place, place, `${typed}\n`);
          const fresh = await start(new Map([...files, [ROOT + PATH, text]]));
          const [own, anew] = [workspace, fresh].map((w) => {
            const snapshot = w.snapshot(ROOT + PATH);
            const cursor = snapshot && cursorAt(snapshot, place + typed.length);
            if (w === workspace && cursor && snapshot?.standing(cursor.lineStart)) standing += 1;
            return snapshot && cursor ? offersAt(snapshot, cursor) : [];
          });
          expect(own).toEqual(anew);
        },
      ),
      { numRuns: 250, seed: 20_261_125 },
    );
    // Edits that leave the work above alone must be common among these, or nothing was asked.
    expect(standing).toBeGreaterThan(30);
  });

  test('what the checker sends in the end is what a whole check finds', async () => {
    const files = new Map(Object.entries(shop(WORK)).map(([path, text]) => [ROOT + path, text]));
    const workspace = await start(files);
    workspace.open(`${ROOT}catalogue/van.bay`, 1, CATALOGUE);
    await workspace.ready;
    const waiting: (() => void)[] = [];
    const sent = new Map<string, unknown>();
    const checker = new Checker(workspace, {
      publish: (uri, _version, diagnostics) => sent.set(uri, diagnostics),
      checked: () => undefined,
      progress: () => undefined,
      unused: () => undefined,
      now: () => 0,
      later: (_ms, work) => {
        waiting.push(work);
        return () => void waiting.splice(waiting.indexOf(work), waiting.includes(work) ? 1 : 0);
      },
    });
    const settle = (): void => {
      for (let work = waiting.shift(); work; work = waiting.shift()) work();
    };
    checker.everything();
    settle();
    const changed = CATALOGUE.replace('  wheel-nut: Wheel nuts', '  stud-nut: Wheel nuts');
    workspace.change(`${ROOT}catalogue/van.bay`, 2, [{ text: changed }]);
    checker.edited(`${ROOT}catalogue/van.bay`);
    settle();
    const library = createLibrary(
      { read: (p) => ({ ...shop(WORK), 'catalogue/van.bay': changed })[p], list: () => [...FILES] },
      DEFAULT_SETTINGS,
    );
    const codes = (list: unknown): unknown => (list as { code: string }[]).map((d) => d.code).sort();
    for (const path of FILES) {
      const wide = libraryFindings(library, FILES).filter((f) => f.file === path);
      expect(codes(sent.get(ROOT + path))).toEqual(
        codes([...(library.analyse(path)?.findings ?? []), ...wide]),
      );
    }
  });
});

function compareAt(workspace: Workspace, fresh: Workspace, offset: number): void {
  const [a, b] = [workspace, fresh].map((w) => {
    const snapshot = w.snapshot(ROOT + PATH);
    const cursor = snapshot && cursorAt(snapshot, offset);
    const { run } = snapshot?.analysis() ?? {};
    return {
      offers: snapshot && cursor ? offersAt(snapshot, cursor).map((o) => o.label) : [],
      state: run ? stateAt(run, offset).map((f) => [f.group, f.thing.name, f.detail, f.variants]) : [],
    };
  });
  expect(a).toEqual(b);
}

/** Lines end at LF, CRLF and a lone CR. */
function lspPosition(text: string, offset: number): { line: number; character: number } {
  const before = text.slice(0, offset).split(/\r\n|\r(?!\n)|\n/);
  return /\r/.test(text)
    ? { line: before.length - 1, character: before.at(-1)?.length ?? 0 }
    : positionAt(text, offset);
}
