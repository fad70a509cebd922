// The pages of findings: why each matters, a text that has it, and the same put right.
import type { CodeLetter, DiagnosticDef } from '../diagnostics/define.js';
import { findingFile } from '../diagnostics/finding-file.js';
import { DIAGNOSTICS } from '../diagnostics/index.js';
import { code, type Page, page, table } from './markdown.js';
import { LETTER_NAMES } from './names.js';

type Def = DiagnosticDef<never>;

export function findingPages(): Page[] {
  return [index(), ...DIAGNOSTICS.map(findingPage)];
}

function index(): Page {
  const letters = [...new Set(DIAGNOSTICS.map(letterOf))];
  const groups = letters.flatMap((letter) => [
    `## ${letter}: ${LETTER_NAMES[letter]}`,
    table(
      ['Code', 'Name', 'Severity'],
      DIAGNOSTICS.filter((def) => letterOf(def) === letter)
        .toSorted((a, b) => (a.code < b.code ? -1 : 1))
        .map((def) => [`[${def.code}](${findingFile(def)})`, def.name, def.severity]),
    ),
  ]);
  return page(
    'findings/README.md',
    'Findings',
    'An **error** cannot be right. A **warning** should be acted on. A **question** is something a draft may still leave open and a release may not: a value, a name without an entry, and, until `installation` or `completion` has a line, what the job leaves off. A **hint** is advice.',
    'Settings can make a code graver or milder, an error apart. In a file, `accept CODE: reason` above a line silences that code on it; the reason is printed in the review report.',
    ...groups,
  );
}

const letterOf = (def: Def): CodeLetter => def.code.slice(0, 1) as CodeLetter;

/** The page of one kind of finding. */
export function findingPage(def: Def): Page {
  return page(
    `findings/${findingFile(def)}`,
    `${def.code} ${def.name}`,
    `${LETTER_NAMES[letterOf(def)]} · ${def.severity}`,
    def.why.trim(),
    '## Wrong',
    example(def.wrong, `wrong ${def.code}`),
    '## Right',
    example(def.right, ''),
    `On the command line: ${code(`baywright explain ${def.code}`)}`,
  );
}

/** An example of several files, or of settings, keeps its `--- file: path` lines. */
function example(text: string, info: string): string {
  return `\`\`\`bay${info === '' ? '' : ` ${info}`}\n${text.replace(/^\n+|\n+$/g, '')}\n\`\`\``;
}
