// A library whose findings are written in its files, to test what is done with findings: a line
// `!error S101 name: message` has that finding at the word `here` of the same line, and a preferred fix that
// takes the mark `!` away. Of several marks each is a finding once the one before it is gone.

import type { Checked, Found } from '../../compiler/src/cli/check.js';
import type { Shelf } from '../../compiler/src/cli/libraries.js';
import type { Finding, Severity } from '../../language/src/diagnostics/define.js';
import { DEFAULT_SETTINGS } from '../../language/src/settings/index.js';

const MARK = /^(!+)(error|warning|question|hint) ([A-Z]\d+) ([a-z-]+): (.*)$/gmu;

function findingsIn(file: string, text: string): Finding[] {
  return [...text.matchAll(MARK)].map((match) => {
    const [line, , severity = '', code = '', name = '', message = ''] = match;
    const start = match.index + Math.max(0, line.indexOf('here'));
    return {
      code: code as Finding['code'],
      name,
      severity: severity as Severity,
      message,
      file,
      span: { start, end: start + 4 },
      related: line.includes('see') ? [{ file, span: { start: 0, end: 5 }, message: 'taken off here' }] : [],
      fixes: [
        {
          title: 'Take the mark away',
          edits: [{ file, span: { start: match.index, end: match.index + 1 }, text: '' }],
          preferred: true,
        },
      ],
      ...(line.includes('advice') ? { advice: 'Put it back' } : {}),
      ...(line.includes('heavy') ? { variants: 'axle heavy' } : {}),
    };
  });
}

/** A library at /shop/lib with these files, changed by `forget` when `files` is. */
export function fakeShelf(files: Map<string, string>): Shelf {
  const found = (path: string) => findingsIn(path, files.get(path) ?? '');
  return {
    root: '/shop/lib',
    hasSettings: true,
    settings: DEFAULT_SETTINGS,
    settingsFindings: [],
    problem: undefined,
    read: (path) => ({ text: files.get(path) ?? '' }) as ReturnType<Shelf['read']>,
    trust: () => {},
    fact: () => undefined,
    mark: () => undefined,
    ignores: () => false,
    pathOf: () => undefined,
    numberOf: () => undefined,
    exists: (path) => files.has(path),
    outputName: (path) => path.replace(/\.bay$/, ''),
    files: [...files.keys()].sort(),
    text: (path) => files.get(path),
    forget: () => {},
    library: {
      analyse: (path: string) => ({ findings: found(path) }),
      libraryFindings: () => [],
    } as unknown as Shelf['library'],
  };
}

export function checkedOf(files: Record<string, string>): Checked {
  const shelf = fakeShelf(new Map(Object.entries(files)));
  const found: Found[] = shelf.files.flatMap((path) =>
    findingsIn(path, files[path] ?? '').map((finding) => ({ shelf, finding })),
  );
  return { collection: { shelves: [shelf], troubles: [] }, found, troubles: [], files: shelf.files.length };
}
