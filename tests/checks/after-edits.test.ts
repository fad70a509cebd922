// What is kept of lines and names over an edit holds only while the names mean the same: the findings are those of a new library.
import { createLibrary, DEFAULT_SETTINGS } from '@baywright/language';
import { expect, test } from 'vitest';

const PROCEDURE = `procedure A-1: Cover, renew

use "van.bay"

applies to van

parts
  cover: Cover
    held by bolt

removal
  step: Off
    remove bolt, cover
    clean face

installation
  step: On
    install cover, bolt
    torque bolt
`;
const CATALOGUE = `catalogue: Van

vehicles
  van: Van

fasteners
  bolt: Bolts
    4 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "S-1"

sources
  S-1: Sheet

places
  face: Face
`;

const findingsOf = (library: ReturnType<typeof createLibrary>) =>
  library.analyse('a.bay')?.findings.map(({ code, message, span }) => [code, message, span]);

test.each<[string, 'a.bay' | 'van.bay', string, string]>([
  ['a line of the work goes', 'a.bay', '    torque bolt\n', ''],
  ['a line above moves the others', 'a.bay', 'applies to van\n', '# Look\n\napplies to van\n'],
  ['an entry goes', 'a.bay', 'parts\n  cover: Cover\n    held by bolt\n', ''],
  ['an entry becomes another kind', 'a.bay', 'parts\n  cover', 'places\n  cover'],
  ['an own entry hides the catalogue', 'a.bay', 'parts\n', 'parts\n  face: Face\n'],
  ['a catalogue entry goes', 'van.bay', 'places\n  face: Face\n', ''],
  ['a catalogue entry gets another name', 'van.bay', '  bolt: Bolts', '  nut: Nuts'],
  ['a catalogue figure changes', 'van.bay', '22 N·m', '90 N·m'],
  ['the import goes', 'a.bay', 'use "van.bay"\n', ''],
])('%s', (_, path, from, to) => {
  const files = new Map([
    ['a.bay', PROCEDURE],
    ['van.bay', CATALOGUE],
  ]);
  const host = { read: (name: string) => files.get(name), list: () => [...files.keys()] };
  const library = createLibrary(host, DEFAULT_SETTINGS);
  const before = findingsOf(library);
  const text = files.get(path) ?? '';
  for (const now of [text.replace(from, to), text, text.replace(from, to)]) {
    files.set(path, now);
    library.changed(path);
    expect(findingsOf(library)).toEqual(findingsOf(createLibrary(host, DEFAULT_SETTINGS)));
  }
  expect(files.get(path)).not.toBe(text);
  files.set(path, text);
  library.changed(path);
  expect(findingsOf(library)).toEqual(before);
});
