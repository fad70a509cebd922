// Guides that need not be made again: nothing that they were made from has changed, and they lie where they were written.
import type { Finding } from '@baywright/language';
import { packagePath } from '../../package-files.js';
import type { KeptFile } from '../checked-file.js';
import type { FileCache } from '../file-cache.js';
import type { Shelf } from '../libraries.js';
import { join } from '../paths.js';
import { type Reads, readsHold } from '../reads.js';
import type { Shell } from '../shell.js';
import { askedOf } from './choices.js';
import type { FileResult, GuideOrder, GuideResult } from './guides.js';

export type GuideCache = FileCache<KeptGuides>;

/** What is kept of a file: of a procedure its prints for the last few orders, of a catalogue none. */
export interface KeptGuides extends KeptFile {
  readonly prints: readonly KeptPrint[];
}

/** What came of one order, and all it rests on beside what its file rests on. */
interface KeptPrint extends MadePrint {
  /** Hash of all that was asked for. */
  readonly order: string;
  /** Hash of what the whole library said of the procedure. */
  readonly wide: string;
}

export interface MadePrint {
  readonly guide: GuideResult;
  /** Pictures, translations and issues. */
  readonly reads: Reads;
  /** By what each written file was known, by its path. */
  readonly written: Readonly<Record<string, string>>;
}

/** Who prints for the bay, for training and each side alone takes turns between a few orders. */
const MOST_ORDERS = 6;

export interface GuideKeeper {
  /** What an earlier run knew of a file, if all but what the library says of it is as it was, its guides too. */
  file(path: string): KeptFile | undefined;
  /** What came of such a file, if the library says the same of it. */
  result(path: string, wide: readonly Finding[]): FileResult | undefined;
  keep(made: FileResult, wide: readonly Finding[]): void;
  save(): void;
}

export function guideKeeper(shell: Shell, shelf: Shelf, cache: GuideCache, order: GuideOrder): GuideKeeper {
  const key = orderKey(shell, order);
  const wideKey = (wide: readonly Finding[]): string => shell.hash(JSON.stringify(wide));
  const printOf = (kept: KeptGuides | undefined): KeptPrint | undefined =>
    kept?.prints.find((print) => print.order === key);
  const isAsWritten = ([file, mark]: [string, string]): boolean => shell.seen?.(file)?.mark === mark;
  const standing = new Map<string, KeptGuides>();
  for (const path of shelf.files) {
    const kept = cache.get(path);
    const print = printOf(kept);
    if (kept === undefined || (print === undefined && kept.part.kind === 'procedure')) continue;
    if (print && !(Object.entries(print.written).every(isAsWritten) && readsHold(shell, print.reads)))
      continue;
    standing.set(path, kept);
  }
  return {
    file: (path) => standing.get(path),
    result(path, wide) {
      const kept = standing.get(path);
      const print = printOf(kept);
      if (kept === undefined || (print && print.wide !== wideKey(wide))) return undefined;
      // Nothing with errors of its own is kept.
      const errors = wide.filter(({ severity }) => severity === 'error');
      return { path, errors, ...(print ? { guide: print.guide } : {}) };
    },
    keep({ path, kept }, wide) {
      if (kept === undefined) return;
      const { file, print } = kept;
      const others = (cache.get(path)?.prints ?? []).filter((one) => one.order !== key);
      const own = print ? [{ ...print, order: key, wide: wideKey(wide) }] : [];
      cache.put({ ...file, prints: [...own, ...others].slice(0, MOST_ORDERS) });
    },
    // A build of one file does not throw away what is known of the others.
    save: () => cache.save(shelf.hasSettings ? shelf.library.host.list() : shelf.files),
  };
}

/** Where guides go, what is asked of them, and the files they are set with. */
function orderKey(shell: Shell, { folder, formats, options }: GuideOrder): string {
  const { out: _out, ...asked } = askedOf(options);
  const marks = ['html', 'pdf'].flatMap((kind) => {
    const templates = packagePath('templates', kind);
    const files = shell.list(templates);
    return 'problem' in files ? [] : files.map(({ name }) => shell.seen?.(join(templates, name))?.mark ?? '');
  });
  return shell.hash(JSON.stringify([folder, formats, asked, shell.env.SOURCE_DATE_EPOCH ?? '', marks]));
}
