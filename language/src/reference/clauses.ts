// The page of clauses: of entries in sections that declare, and of statements.

import { VERBS } from '../verbs/index.js';
import { type ClauseShape, ENTRY_CLAUSES, STEP_CLAUSES } from '../vocabulary/clauses.js';
import { ENTRY_CLAUSE_EXAMPLES, STEP_CLAUSE_EXAMPLES } from '../vocabulary/examples.js';
import { code, list, type Page, page, table } from './markdown.js';

const SHAPES: Readonly<Record<ClauseShape | 'names or spec' | 'event', string>> = {
  names: 'things',
  spec: 'a quantity',
  raw: 'text',
  words: 'words',
  option: 'an option and its values',
  flag: 'nothing',
  reason: 'a reason after the colon',
  'names or spec': 'things or a quantity',
  event: 'an act',
};

export function clausePages(): Page[] {
  return [
    page(
      'clauses.md',
      'Clauses',
      'A clause stands on a line of its own below what it belongs to, or after a comma. It starts with its word, or with a number. `?` stands for what is not known yet.',
      list([
        '**things**: names parted by commas, with counts where they matter: `held by 2 of cover-bolt, axle-nut`',
        '**a quantity**: a value, tolerance, range or bound, torques in stages: see [quantities](quantities.md)',
        '**text**: up to the comma, read by the standard it names: see [fasteners](fasteners.md) and [fluids](fluids.md)',
        '**words**: words that the house chooses',
      ]),
      '## Clauses of entries',
      table(
        ['Clause', 'Takes', 'On', 'Says', 'Example'],
        ENTRY_CLAUSES.map((clause) => [
          code(clause.word),
          entryTakes(clause),
          clause.on.join(', '),
          clause.docs,
          code(ENTRY_CLAUSE_EXAMPLES[clause.word] ?? ''),
        ]),
      ),
      'A fastener starts with how many there are and of what: `4 of M12x1.5`, or without a thread `3 of clip`. `only when` and a guard say for which variants an entry exists; `when` and a guard after a clause say for which that clause holds.',
      '## Clauses of statements',
      table(
        ['Clause', 'Takes', 'Says', 'Example', 'Verbs'],
        STEP_CLAUSES.map((clause) => [
          code(clause.word),
          clause.quantity ? `${SHAPES[clause.shape]}: ${clause.quantity.join(', ')}` : SHAPES[clause.shape],
          clause.docs,
          code(STEP_CLAUSE_EXAMPLES[clause.word] ?? ''),
          verbsWith(clause.word),
        ]),
      ),
    ),
  ];
}

function entryTakes(clause: (typeof ENTRY_CLAUSES)[number]): string {
  const kinds = [...(clause.names ?? []), ...(clause.quantity ?? [])].join(', ');
  const shape = clause.unitless ? 'a number' : SHAPES[clause.shape];
  return kinds === '' ? shape : `${shape}: ${kinds}`;
}

/** The verbs that take a clause; for `with` and its like, which nearly all take, only that. */
function verbsWith(word: string): string {
  const verbs = VERBS.filter((verb) => word in verb.clauses);
  if (verbs.length > 30) return 'most';
  return verbs.map((verb) => `[${verb.word}](verbs/${verb.word}.md)`).join(', ');
}
