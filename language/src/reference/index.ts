// The reference, made from the tables of the language: no page of it is written by hand.
import { clausePages } from './clauses.js';
import { fastenerPages } from './fasteners.js';
import { findingPages } from './findings.js';
import { fluidPages } from './fluids.js';
import { linePages } from './lines.js';
import { list, type Page, page } from './markdown.js';
import { markPages } from './marks.js';
import { quantityPages } from './quantities.js';
import { rulePages } from './rules.js';
import { settingPages } from './settings.js';
import { verbPages } from './verbs.js';

export type { Page } from './markdown.js';

/** All pages, by path from the folder of the reference. */
export function referencePages(): Page[] {
  return [
    contents(),
    ...linePages(),
    ...clausePages(),
    ...verbPages(),
    ...quantityPages(),
    ...fastenerPages(),
    ...fluidPages(),
    ...rulePages(),
    ...markPages(),
    ...findingPages(),
    ...settingPages(),
  ];
}

function contents(): Page {
  return page(
    'README.md',
    'Baywright reference',
    'To learn the language, start with the [guide](../guide/README.md). This is for looking things up.',
    list([
      '[Sections](sections.md): what a file is made of',
      '[Lines](lines.md): the words that open a line, and the colon rule',
      '[Clauses](clauses.md) of entries and of statements',
      '[Verbs](verbs/README.md): what each needs, makes and prints',
      '[Quantities](quantities.md): units, tolerances, ranges, and spellings that are asked about',
      '[Fasteners](fasteners.md): threads, classes, heads, nut factors',
      '[Fluids and supplies](fluids.md): grades, boiling points, cure times',
      '[House rules](rules.md): words, states, the starter pack',
      '[Marks](marks.md) that mean something to the checker',
      '[Usual cautions](cautions.md): what calls for them, and their texts',
      '[Findings](findings/README.md): every code, with an example and its remedy',
      '[Settings](settings.md) of a library',
      '[The command line](../../../compiler/docs/commands.md)',
    ]),
  );
}
