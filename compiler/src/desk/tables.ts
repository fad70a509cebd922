// Specifications and pull lists as tables for spreadsheets.
import {
  type Analysis,
  type Clause,
  clausesOf,
  clauseWritten,
  guardWritten,
  type Thing,
} from '@baywright/language';
import { plain } from '../document/inline.js';
import { type GuideShelf, lowerGuide } from '../document/lower/index.js';
import { checkedModel } from './model.js';
import { COLUMN_WORDS, WHEN } from './spec-columns.js';

export interface Table {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Every figure of the files' own entries, one a row, as written and in SI. */
export function figureTable(analyses: readonly Analysis[]): Table {
  const columns = [
    'file',
    'name',
    'title',
    'kind',
    'of',
    'written',
    'when',
    'measures',
    'nominal',
    'low',
    'high',
    'per',
  ];
  const rows = analyses.flatMap((analysis) =>
    checkedModel(analysis)
      .things.filter(({ file }) => file === analysis.path)
      .flatMap((thing) => {
        const source = thing.clauses
          .find(({ word }) => word === 'per')
          ?.written.replace(/^per /, '')
          .replaceAll('"', '');
        return thing.clauses.flatMap(({ word, written, when, quantities }) =>
          (quantities ?? []).map(({ kind, nominal, low, high, written: stage }) => [
            thing.file,
            thing.name,
            thing.title,
            thing.kind,
            word,
            quantities?.length === 1 ? written.replace(new RegExp(`^${word} `), '') : stage,
            when ?? '',
            kind,
            String(nominal ?? ''),
            String(low ?? ''),
            String(high ?? ''),
            source ?? '',
          ]),
        );
      }),
  );
  return { columns, rows };
}

/**
 * Entries in the columns that `import` reads: a row for what holds always, and below it one for each variant that has
 * values of its own, with its condition under `when`.
 */
export function specTable(analyses: readonly Analysis[]): Table {
  const things = analyses.flatMap(({ model }) =>
    model.things.filter(({ kind }) => COLUMN_WORDS.kinds.includes(kind)),
  );
  const texts = new Map(analyses.map(({ model }) => [model.path, model.tree.text]));
  const rows = things.flatMap((thing) => specRows(thing, texts.get(thing.file) ?? ''));
  const hasVariants = rows.some(({ when }) => when !== '');
  const used = COLUMN_WORDS.clauses.filter((word) => rows.some(({ cells }) => cells.has(word)));
  return {
    columns: ['section', 'name', 'title', ...(hasVariants ? [WHEN] : []), ...used],
    rows: rows.map(({ thing, when, cells }) => [
      COLUMN_WORDS.sectionOf(thing.kind),
      thing.name,
      thing.title,
      ...(hasVariants ? [when] : []),
      ...used.map((word) => cells.get(word) ?? ''),
    ]),
  };
}

/** Told together in the source: `4 of M8x1.25`. */
const IN_SET: ReadonlySet<string> = new Set(['count', 'thread']);

interface SpecCells {
  readonly thing: Thing;
  readonly when: string;
  readonly cells: ReadonlyMap<string, string>;
}

function specRows(thing: Thing, text: string): SpecCells[] {
  const clauses = COLUMN_WORDS.clauses.flatMap((word) =>
    [...(IN_SET.has(word) ? clausesOf(thing, 'of') : []), ...clausesOf(thing, word)].map(
      ({ clause, guard }) => ({
        word,
        when: guard === undefined ? '' : guardWritten(text, guard),
        value: cellText(text, word, clause),
      }),
    ),
  );
  const variants = new Set(clauses.map(({ when }) => when).filter((when) => when !== ''));
  const always = thing.exists
    .map((guard) => guardWritten(text, guard).replace(/^when/, 'only when'))
    .join(', ');
  return ['', ...variants].map((when) => {
    const own = clauses.filter((clause) => clause.when === when);
    // A cell holds one value; an entry with several at once keeps them in the source.
    const alone = own.filter(
      ({ word, value }) => value !== '' && own.filter((o) => o.word === word).length === 1,
    );
    return {
      thing,
      when: when === '' ? always : when,
      cells: new Map(alone.map(({ word, value }) => [word, value])),
    };
  });
}

function cellText(text: string, word: string, clause: Clause): string {
  if (clause.word === 'of') {
    const part = word === 'count' ? clause.count : clause.raw;
    return part === undefined ? '' : text.slice(part.start, part.end);
  }
  const written = clauseWritten(text, clause);
  return written === word
    ? 'yes'
    : written
        .slice(word.length)
        .trim()
        .replace(/^"([^"]*)"$/, '$1');
}

/** What the parts counter hands out for each procedure, for both sides where there are two. */
export function pullTable(analyses: readonly Analysis[], shelf: GuideShelf): Table {
  const columns = ['procedure', 'title', 'group', 'what', 'number', 'amount', 'for'];
  const rows = analyses
    .filter(({ model }) => model.kind === 'procedure')
    .flatMap((analysis) => {
      const { document } = lowerGuide(
        analysis,
        {
          sheet: 'pull-sheet',
          option: {},
          units: shelf.settings.units,
          language: shelf.settings.languages[0] ?? 'en',
          ...(analysis.model.sides.length > 1 ? { side: 'both' } : {}),
        },
        shelf,
      );
      return document.blocks.flatMap((block) =>
        block.kind !== 'needs'
          ? []
          : block.groups.flatMap((group) =>
              group.rows.map((row) => [
                analysis.model.number ?? '',
                analysis.model.title,
                group.title,
                plain(row.what),
                row.number ?? '',
                row.amount === undefined ? '' : plain(row.amount),
                plain(row.for),
              ]),
            ),
      );
    });
  return { columns, rows };
}
