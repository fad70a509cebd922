// A clause word used as a name.
import { defineDiagnostic } from './define.js';

export const reservedName = defineDiagnostic<{ readonly word: string; readonly longer?: string | undefined }>(
  {
    code: 'G207',
    name: 'reserved-name',
    severity: 'error',
    message: ({ word }) => `\`${word}\` is a word of the language and cannot be a name`,
    advice: ({ word, longer }) => `write a longer name, such as \`${longer ?? `front-${word}`}\``,
    why: `Lists of names end at the next clause word. A thing with such a name could never be told from the clause.`,
    wrong: `procedure A-1: Mirror, replace

supplies
  grease: Hinge grease
# ^^^^^^ G207`,
    right: `procedure A-1: Mirror, replace

supplies
  hinge-grease: Hinge grease`,
  },
);
