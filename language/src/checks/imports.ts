// N301, N302, N303: files that are used and are not there, lead round in a ring or out of the library.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { importCycle, importNotFound, importOutside } from '../diagnostics/names.js';
import { resolvePath } from '../names/scope.js';
import type { UseLine } from '../syntax/tree.js';
import { editDistance } from '../vocabulary/near.js';
import type { Check } from './check.js';

export const imports: Check = ({ job: { file, scope }, library }) => [
  ...scope.missing.map((line) => missing(file.path, line, library.host.list())),
  ...scope.cycles.map(({ line, way }) =>
    finding(importCycle, { file: file.path, span: pathSpan(line) }, { way }),
  ),
];

function missing(file: string, line: UseLine, known: readonly string[]): Finding {
  const written = line.path?.text ?? '';
  const path = resolvePath(file, written);
  const span = pathSpan(line);
  if (path === undefined) return finding(importOutside, { file, span }, { path: written });
  const near = nearestPath(
    path,
    known.filter((each) => each !== file),
  );
  const relative = near === undefined ? undefined : relativePath(file, near);
  const fixes: Fix[] =
    relative === undefined
      ? []
      : [{ title: `Use "${relative}"`, edits: [{ file, span, text: `"${relative}"` }], preferred: true }];
  return finding(importNotFound, { file, span, fixes }, { path, near: relative });
}

/** A file of the same name elsewhere, else the one whose path is fewest edits away. */
function nearestPath(path: string, known: readonly string[]): string | undefined {
  const name = baseName(path);
  const moved = known.filter((each) => baseName(each) === name);
  if (moved[0] !== undefined) return moved[0];
  const limit = Math.max(2, Math.floor(name.length / 4));
  let best: { path: string; edits: number } | undefined;
  for (const each of known) {
    const edits = editDistance(name, baseName(each), limit);
    if (edits <= limit && (best === undefined || edits < best.edits)) best = { path: each, edits };
  }
  return best?.path;
}

/** A path in the library as it is written in a file. */
function relativePath(from: string, to: string): string {
  const own = from.split('/').slice(0, -1);
  const parts = to.split('/');
  let shared = 0;
  while (shared < own.length && shared < parts.length - 1 && own[shared] === parts[shared]) shared += 1;
  return [...own.slice(shared).map(() => '..'), ...parts.slice(shared)].join('/');
}

function baseName(path: string): string {
  return path.slice(path.lastIndexOf('/') + 1);
}

function pathSpan(line: UseLine): { start: number; end: number } {
  const at = line.path ?? line.code;
  return { start: at.start, end: at.end };
}
