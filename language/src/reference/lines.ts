// The pages of what a file is made of: its sections, and the words that open a line.
import { DIAGNOSTICS } from '../diagnostics/index.js';
import { ENTRY_CLAUSES } from '../vocabulary/clauses.js';
import { HEAD_EXAMPLES, SECTION_EXAMPLES } from '../vocabulary/examples.js';
import { CONTEXT_WORDS, HEADS, type HeadClass, LINE_CONTEXTS } from '../vocabulary/heads.js';
import { LANGUAGES, perSideByDefault } from '../vocabulary/kinds.js';
import { SECTIONS, type SectionDef } from '../vocabulary/sections.js';
import { SIGNAL_WORDS, SIGNALS } from '../vocabulary/signals.js';
import { STATUSES } from '../vocabulary/statuses.js';
import { bay, code, codes, type Page, page, table } from './markdown.js';
import { LANGUAGE_NAMES } from './names.js';

export function linePages(): Page[] {
  return [sectionPage(), headPage()];
}

function sectionPage(): Page {
  const [declaring, work] = [
    SECTIONS.filter((s) => s.work !== true),
    SECTIONS.filter((s) => s.work === true),
  ];
  return page(
    'sections.md',
    'Sections',
    'A section word stands alone at the left edge. Sections come in any order and as often as wanted; sections of work keep the order they are written in.',
    '## Sections that declare',
    'Each line one level in is an entry: a name, a colon, and the title that guides print. Its clauses stand below it.',
    ...declaring.flatMap(sectionBlocks),
    '## Sections of work',
    'They hold steps, and operations that other procedures may perform.',
    ...work.flatMap(sectionBlocks),
    '## Headings in print',
    table(
      ['Section', ...LANGUAGES.map((language) => LANGUAGE_NAMES[language])],
      SECTIONS.map((s) => [code(s.word), ...LANGUAGES.map((language) => s.heading[language])]),
    ),
  );
}

function sectionBlocks(section: SectionDef): string[] {
  const { word, declares, docs } = section;
  const clauses = declares === undefined ? [] : ENTRY_CLAUSES.filter((c) => c.on.includes(declares));
  const side =
    declares === undefined ? '' : ` Counted ${perSideByDefault(declares)}, unless its entry says otherwise.`;
  return [
    `### ${word}`,
    `${docs}${side}`,
    bay(SECTION_EXAMPLES[word] ?? '', 'section'),
    clauses.length === 0 ? '' : `Clauses: ${codes(clauses.map((c) => c.word))}.`,
  ];
}

const CLASS_DOCS: Readonly<Record<HeadClass, string>> = {
  titled: 'Behind the colon stands the title, which the line may not go without. Below it stands code.',
  prose: 'Behind the colon, or below it one level deeper, stands the text for the technician. No code below.',
  block: 'Behind the colon stands a remark. The lines it holds for stand below.',
  plain: 'Behind the colon stands a remark. When the colon ends the line, the text stands below.',
};

function headPage(): Page {
  const classes = ['titled', 'prose', 'block', 'plain'] as const;
  return page(
    'lines.md',
    'Lines',
    '**The colon rule.** Before the first colon of a line the checker reads; after it the technician reads. A colon inside quotes or between two digits does not count. `#` and a space make a comment. Two spaces make a level, and a line belongs to the nearest shallower line above it.',
    'Besides verbs, clauses and section words, these words open a line.',
    ...classes.flatMap((cls) => [
      `## ${cls[0]?.toUpperCase()}${cls.slice(1)} lines`,
      CLASS_DOCS[cls],
      table(
        ['Word', 'Says', 'Stands', 'Example'],
        HEADS.filter((head) => head.class === cls).map((head) => [
          code(head.word),
          head.docs,
          head.contexts.length === LINE_CONTEXTS.length
            ? 'anywhere'
            : head.contexts.map((context) => CONTEXT_WORDS[context].replaceAll('`', '')).join('; '),
          code(HEAD_EXAMPLES[head.word] ?? ''),
        ]),
      ),
    ]),
    '## Signal words',
    'From the gravest down (ANSI Z535.6, ISO 3864-2).',
    table(
      ['Word', ...LANGUAGES.map((language) => LANGUAGE_NAMES[language])],
      SIGNALS.map((signal) => [code(signal), ...LANGUAGES.map((language) => SIGNAL_WORDS[signal][language])]),
    ),
    '## Statuses',
    `A procedure is ${STATUSES.map(code).join(', ')}. A released one may leave no question open (${openCodes()}).`,
  );
}

/** The code that tells of a release with open points, with a link. */
function openCodes(): string {
  const def = DIAGNOSTICS.find((each) => each.name === 'released-with-open-points');
  return def === undefined ? '' : `[${def.code}](findings/${def.code.toLowerCase()}-${def.name}.md)`;
}
