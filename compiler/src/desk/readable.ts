// Reads files of translations for commands: one that cannot be read stops them with what to do about it.
import { CannotRun } from '../cli/shell.js';
import { readTranslations } from '../translate/po.js';

/** The translations in a file; one that cannot be read is told in words. */
export function readable(file: string, text: string): ReadonlyMap<string, string> {
  try {
    return readTranslations(text);
  } catch {
    throw new CannotRun(
      `${file} is no gettext file: open it in a translation editor, or delete it and gather the texts again`,
    );
  }
}
