// What options mean that several commands have: a language, and where a result goes.
import { LANGUAGES, type Language } from '@baywright/language';
import { relativeTo } from './paths.js';
import { CannotRun, type Shell } from './shell.js';

/** The output language of a code as typed. Throws {@link CannotRun} for one that there is none of. */
export function readLanguage(code: string): Language {
  const language = LANGUAGES.find((known) => known === code);
  if (language === undefined)
    throw new CannotRun(`there is no language “${code}”; there are ${LANGUAGES.join(', ')}`);
  return language;
}

/** Writes a result to the file of `--out` and names it, or to standard output where none is given. */
export function deliver(shell: Shell, out: string | undefined, result: string): void {
  if (out === undefined) {
    shell.out.write(result);
    return;
  }
  const file = shell.resolve(out);
  shell.write(file, result);
  shell.out.write(`${relativeTo(shell.folder, file)}\n`);
}
