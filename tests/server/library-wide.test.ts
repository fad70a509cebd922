// What only the whole library can tell, after edits, is what it would be if all files were read anew.
import { expect, test } from 'vitest';
import { createLibrary, DEFAULT_SETTINGS } from '../../language/src/index.js';
import { LibraryWide } from '../../server/src/library-wide.js';

const texts = new Map([
  ['a.bay', 'catalogue: A\n\nparts\n  hub: Hub\n  disc: Disc\n'],
  ['b.bay', 'procedure B-1: B\n\nuse "a.bay"\n\nremoval\n  step: Off\n    remove hub\n'],
]);
const shelf = { paths: () => [...texts.keys()], settings: DEFAULT_SETTINGS };

function noteAll(wide: LibraryWide): void {
  const library = createLibrary({ read: (p) => texts.get(p), list: shelf.paths }, DEFAULT_SETTINGS);
  for (const [path, text] of texts) {
    const model = library.model(path);
    if (model) wide.note(model, text);
  }
}
const said = (wide: LibraryWide): string[] =>
  [...texts].flatMap(([path, text]) =>
    wide.findingsOf(path, text).map((f) => `${path} ${f.code} ${f.message}`),
  );

test('edits in between are not missed', () => {
  const wide = new LibraryWide();
  noteAll(wide);
  expect(wide.refresh(shelf)).toEqual(['a.bay']);
  expect(said(wide)).toEqual([expect.stringMatching(/^a\.bay R201 .*disc/)]);
  for (const names of ['disc', 'hub, disc', 'hub']) {
    texts.set('b.bay', `procedure B-1: B\n\nuse "a.bay"\n\nremoval\n  step: Off\n    remove ${names}\n`);
    noteAll(wide);
    if (names !== 'disc') wide.refresh(shelf);
    const anew = new LibraryWide();
    noteAll(anew);
    anew.refresh(shelf);
    if (names !== 'disc') expect(said(wide)).toEqual(said(anew));
  }
});

test('words of many edits leave what is told as it is', () => {
  const wide = new LibraryWide();
  for (let i = 0; i < 60; i++) {
    const words = Array.from({ length: 500 }, (_, k) => `word${i}x${k}`).join(' ');
    texts.set('b.bay', `procedure B-1: B\n\nuse "a.bay"\n\nremoval\n  step: Off\n    do: ${words} hub\n`);
    noteAll(wide);
    wide.refresh(shelf);
  }
  const anew = new LibraryWide();
  noteAll(anew);
  anew.refresh(shelf);
  expect(said(wide)).toEqual(said(anew));
});
