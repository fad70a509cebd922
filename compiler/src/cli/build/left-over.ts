// Guides of an earlier build that nothing prints any more: their procedure was renamed or deleted, or has no such side or
// language now. A list of what was written is kept beside the other caches; what it does not name, or what somebody
// changed since, is not the program's own and is left alone.
import * as z from 'zod';
import type { Shelf } from '../libraries.js';
import { below, join, relativeTo } from '../paths.js';
import { CannotRun, type Shell } from '../shell.js';
import { askedOf, type Options } from './choices.js';
import type { Result } from './jobs.js';

export interface LeftOver {
  readonly path: string;
  /** Path of the procedure. */
  readonly source: string;
  readonly isGone: boolean;
}

const writtenSchema = z.object({
  format: z.literal(1),
  /** Where the library lay: in a copy of it the list speaks of files that are not the copy's. */
  root: z.string(),
  files: z.record(
    z.string(),
    z.object({
      /** Library path. */
      source: z.string(),
      /** What was asked for. */
      order: z.string(),
      /** By what the file was known when it was written. */
      mark: z.string(),
    }),
  ),
});
type Written = z.infer<typeof writtenSchema>['files'];

const LIST = 'written.json';

/** Renews the list of a library with what came of a build, and tells what is left over from before. */
export function leftOver(
  shell: Shell,
  shelf: Pick<Shelf, 'root' | 'hasSettings' | 'settings'>,
  results: readonly Result[],
  options: Options,
): LeftOver[] {
  const { root, hasSettings } = shelf;
  const places = shell.cacheFolders?.(root, hasSettings) ?? [];
  const before = places
    .map((place) => readList(shell, root, join(place, LIST)))
    .find((one) => one !== undefined);
  // Other folders that guides went to may be anybody's by now.
  const folder = options.out === undefined ? join(root, shelf.settings.output) : shell.resolve(options.out);
  const order = orderOf(options);
  const files: Written = {};
  const printed = new Set<string>();
  for (const result of results) {
    if (result.state === 'written') printed.add(result.path);
    for (const { path } of result.files) {
      const mark = shell.seen?.(path)?.mark;
      if (mark !== undefined) files[path] = { source: result.path, order, mark };
    }
  }
  const found: LeftOver[] = [];
  for (const [path, one] of Object.entries(before ?? {})) {
    if (Object.hasOwn(files, path) || shell.seen?.(path)?.mark !== one.mark) continue;
    files[path] = one;
    if (below(folder, path) === undefined) continue;
    const source = join(root, one.source);
    const isGone = shell.kind(source) === undefined;
    if (isGone || (printed.has(one.source) && one.order === order)) found.push({ path, source, isGone });
  }
  writeList(shell, root, places, files, before);
  return found.sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** Deletes guides that are left over; nothing else is ever deleted. */
export function clearAway(shell: Shell, found: readonly LeftOver[]): void {
  for (const { path } of found) shell.remove(path);
}

export function leftOverText(shell: Shell, found: readonly LeftOver[], isCleared: boolean): string {
  if (found.length === 0) return '';
  const count = found.length === 1 ? '1 older guide' : `${found.length} older guides`;
  const head = isCleared
    ? `Deleted ${count}:`
    : `${count} in the output folder: do not work by ${found.length === 1 ? 'it' : 'them'}; --tidy deletes ${found.length === 1 ? 'it' : 'them'}.`;
  const lines = found.map(({ path, source, isGone }) => {
    const why = isGone ? 'is gone' : 'prints it no more';
    return `  ${relativeTo(shell.folder, path)} (${relativeTo(shell.folder, source)} ${why})`;
  });
  return `${[head, ...lines].join('\n')}\n`;
}

/** Another sheet, side or option asked for makes other files, and those of before hold. */
const orderOf = (options: Options): string => JSON.stringify(askedOf(options));

function readList(shell: Shell, root: string, path: string): Written | undefined {
  const reading = shell.read(path);
  if ('problem' in reading) return undefined;
  try {
    const parsed = writtenSchema.safeParse(JSON.parse(reading.text));
    return parsed.success && parsed.data.root === root ? parsed.data.files : undefined;
  } catch {
    return undefined;
  }
}

function writeList(
  shell: Shell,
  root: string,
  places: readonly string[],
  files: Written,
  before: Written | undefined,
): void {
  const sorted = Object.fromEntries(Object.entries(files).sort(([a], [b]) => (a < b ? -1 : 1)));
  if (JSON.stringify(sorted) === JSON.stringify(before ?? {})) return;
  for (const place of places) {
    try {
      shell.write(join(place, LIST), `${JSON.stringify({ format: 1, root, files: sorted })}\n`, true);
      return;
    } catch (error) {
      // A library on a drive that cannot be written to has its guides elsewhere, and no list.
      if (!(error instanceof CannotRun)) throw error;
    }
  }
}
