// Specifications and pull lists as tables for spreadsheets.
import { type Analysis, clausesOf, clauseWritten, type Thing } from '@baywright/language';
import { plain } from '../document/inline.js';
import { type GuideShelf, lowerGuide } from '../document/lower/index.js';
import { checkedModel } from './model.js';
import { COLUMN_WORDS } from './spec-columns.js';

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

/** Entries with one figure of each kind, in the columns that `import` reads. */
export function specTable(analyses: readonly Analysis[]): Table {
  const things = analyses.flatMap(({ model }) =>
    model.things.filter(({ kind }) => COLUMN_WORDS.kinds.includes(kind)),
  );
  const source = new Map(analyses.map(({ model }) => [model.path, model.tree.text]));
  const used = COLUMN_WORDS.clauses.filter((word) =>
    things.some((thing) => cellOf(thing, word, source) !== ''),
  );
  return {
    columns: ['section', 'name', 'title', ...used],
    rows: things.map((thing) => [
      COLUMN_WORDS.sectionOf(thing.kind),
      thing.name,
      thing.title,
      ...used.map((word) => cellOf(thing, word, source)),
    ]),
  };
}

/** A cell holds one value; an entry with several, one for each variant, keeps them in the source. */
function cellOf(thing: Thing, word: string, texts: ReadonlyMap<string, string>): string {
  const text = texts.get(thing.file) ?? '';
  if (word === 'count' || word === 'thread') {
    const clause = clausesOf(thing, 'of')[0]?.clause;
    const part = word === 'count' ? clause?.count : clause?.raw;
    return part === undefined ? '' : text.slice(part.start, part.end);
  }
  const all = clausesOf(thing, word);
  const [first] = all;
  if (first === undefined || all.length > 1 || first.guard !== undefined) return '';
  const written = clauseWritten(text, first.clause);
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
