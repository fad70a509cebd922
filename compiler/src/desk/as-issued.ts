// A library as it was when a guide was issued, for printing that edition once more and marking what is printed otherwise
// now. Pictures are not kept with their issue: one whose file has another content today counts as gone.
import { type Analysis, type IssuedEdition, LANGUAGES, type Language } from '@baywright/language';
import { join } from '../cli/paths.js';
import type { Shell } from '../cli/shell.js';
import type { AsIssued } from '../document/lower/print.js';
import { translationPath } from '../translate/po.js';
import { changesSince, shownIn, shownNow } from './changes-since.js';
import type { StoreLibrary } from './issue-store.js';
import { readable } from './readable.js';

export function asIssued(
  shell: Shell,
  { root, settings }: StoreLibrary,
  edition: IssuedEdition,
  { job }: Analysis,
): AsIssued {
  const { files, shown } = edition;
  const read = new Map<string, ReadonlyMap<string, string> | undefined>();
  const translations = (path: string, language: Language): ReadonlyMap<string, string> | undefined => {
    const file = translationPath(path, language);
    const text = files.get(file);
    if (!read.has(file)) read.set(file, text === undefined ? undefined : readable(file, text));
    return read.get(file);
  };
  const hashOf = shownIn(shell, root);
  let today: ReadonlyMap<string, string> | undefined;
  /** The file that holds today what another held then: pictures move between folders. */
  const holding = (hash: string): string | undefined => {
    today ??= new Map(Object.entries(shownNow(shell, root, job)).map(([path, own]) => [own, path]));
    return today.get(hash);
  };
  const bytes = (path: string): Uint8Array | undefined => {
    const hash = shown?.[path];
    const at = shown === undefined || hash === hashOf(path) ? path : hash && holding(hash);
    return at === undefined ? undefined : shell.bytes(join(root, at));
  };
  return {
    shelf: { settings, bytes, translations },
    languages: LANGUAGES.filter((language) =>
      [...files.keys()].some((path) => path.endsWith(`.${language}.po`)),
    ),
    isChanged: () => changesSince(shell, { root, settings }, edition, job).length > 0,
  };
}
