// Where issues lie in a library: `issued/FH-12/4/source/procedures/FH-12-front-hub.bay`. One folder a number, one a
// revision; below `source` the files at their library paths.
import type { IssuedEdition } from './edition.js';

/** The folder of a number's issues. Any number is a safe folder name on any system. */
export function issueFolder(root: string, number: string): string {
  const safe = encodeURIComponent(number).replace(/[.*]/g, (c, at: number) =>
    c === '*' || at === 0 ? `%${c.charCodeAt(0).toString(16).toUpperCase()}` : c,
  );
  return `${root}/${safe}`;
}

export const SOURCE = 'source';

/** Revision folders are plain numbers; anything else in the folder of a number is no issue. */
export function revisionOf(name: string): number | undefined {
  return /^(0|[1-9]\d{0,8})$/.test(name) ? Number(name) : undefined;
}

/** The newest issue of a number among the paths of a library. */
export function newestIssue(
  root: string,
  number: string,
  paths: Iterable<string>,
  read: (path: string) => string | undefined,
): IssuedEdition | undefined {
  const folder = `${issueFolder(root, number)}/`;
  const own = [...paths].filter((path) => path.startsWith(folder));
  const revisions = own.map((path) => revisionOf(path.slice(folder.length).split('/')[0] ?? ''));
  const newest = revisions.reduce(
    (a, b) => (b !== undefined && (a === undefined || b > a) ? b : a),
    undefined,
  );
  return newest === undefined
    ? undefined
    : editionIn(`${folder}${newest}/${SOURCE}/`, number, newest, own, read);
}

/** The edition whose sources lie in a folder. */
export function editionIn(
  source: string,
  number: string,
  revision: number,
  paths: readonly string[],
  read: (path: string) => string | undefined,
): IssuedEdition | undefined {
  const files = new Map<string, string>();
  for (const path of paths) {
    const text = path.startsWith(source) ? read(path) : undefined;
    if (text !== undefined) files.set(path.slice(source.length), text);
  }
  const path = [...files].find(([, text]) => numberIn(text) === number)?.[0];
  return path === undefined ? undefined : { revision, path, files };
}

/** The number of a procedure, read from its opening line alone. */
export function numberIn(text: string): string | undefined {
  const match = /^\uFEFF?(?:\s*#[^\n]*\n|\s*\n)*procedure\s+("[^"]+"|[^\s:]+)/.exec(text.slice(0, 4000));
  return match?.[1]?.replaceAll('"', '');
}
