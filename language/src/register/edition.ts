// An edition of a guide as it was issued: its sources at that time, read again with today's program. Sources are kept
// and not what was once read from them, so that a newer program never sees a change where there is none.
import { bindFile } from '../names/bind.js';
import { jobOf } from '../names/job.js';
import type { FileModel } from '../names/model.js';
import type { Imports } from '../names/scope.js';
import { numberOf } from '../quantity/index.js';
import { parse } from '../syntax/index.js';
import { type ShopFacts, shopFacts } from './facts.js';

/** What the workshop has in hand of a procedure. */
export interface IssuedEdition {
  readonly revision: number;
  /** Library path that the procedure had. */
  readonly path: string;
  /** Texts by library path: the procedure and every file it used. */
  readonly files: ReadonlyMap<string, string>;
  /** Hashes of the pictures and films it showed, by library path; absent where they were not written down. */
  readonly shown?: Readonly<Record<string, string>>;
}

/** Other files of an edition, for names and numbers. */
export function importsFrom(files: ReadonlyMap<string, string>): Imports {
  const models = new Map<string, FileModel | undefined>();
  const model = (path: string): FileModel | undefined => {
    if (models.has(path)) return models.get(path);
    const text = files.get(path);
    const made = text === undefined ? undefined : bindFile(path, parse(text, path).tree);
    models.set(path, made);
    return made;
  };
  return {
    model,
    numbered: (number) => {
      for (const path of files.keys()) if (model(path)?.number === number) return model(path);
      return undefined;
    },
  };
}

/** What an edition says; undefined when its procedure is not among its files. */
export function factsOfEdition({ path, files, shown = {} }: IssuedEdition): ShopFacts | undefined {
  const imports = importsFrom(files);
  const model = imports.model(path);
  return model === undefined ? undefined : shopFacts(jobOf(model, imports), (name) => shown[name]);
}

/** The newest revision that a file names, undefined when it names none. */
export function newestRevision(
  file: FileModel,
): { readonly number: number; readonly day: string | undefined } | undefined {
  const known = file.revisions.flatMap((line) =>
    line.number?.value === undefined ? [] : [{ number: numberOf(line.number.value), day: line.day?.text }],
  );
  return known.sort((a, b) => b.number - a.number)[0];
}
