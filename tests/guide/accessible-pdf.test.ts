// The print of every sample against what a machine can tell of PDF/UA-1 (ISO 14289-1, clause 7; the conditions are those
// of the Matterhorn protocol 1.1): all that is on a page is in the tree of tags or a mere artifact, and the tree is sound.
import { afterAll, expect, test } from 'vitest';
import type { GuideDocument } from '../../compiler/src/document/document.js';
import { renderPdf } from '../../compiler/src/output.js';
import { openEngine } from '../../compiler/src/pdf/engine.js';
import { everyKind, PHOTO } from './fixtures/every-kind.js';
import { openSamples } from './sample-guides.js';
import { pdfDamage } from './support.js';
import { readTags, type Tag, type TaggedPdf, walkTags } from './tag-tree.js';

const engine = openEngine({ processes: 2 });
afterAll(engine.close);

const main = openSamples();
const us = openSamples('us');
const SHEETS = ['torque-card', 'pull-sheet', 'record'] as const;
const LONGEST = 'procedures/FH-12-front-hub.bay';

const DOCUMENTS: readonly (readonly [name: string, document: () => GuideDocument])[] = [
  ['every kind of block', () => everyKind()],
  ...main.procedures.map((name) => [name, () => main.lower(`procedures/${name}`).document] as const),
  ...us.procedures.map((name) => [`us ${name}`, () => us.lower(`procedures/${name}`).document] as const),
  ...SHEETS.map((sheet) => [sheet, () => main.lower(LONGEST, { sheet }).document] as const),
  ['off-now', () => main.lower(LONGEST, { sheet: 'off-now', at: 4000 }).document],
  ['in German', () => main.lower(LONGEST, { language: 'de' }).document],
];

/** Types of ISO 32000-1, 14.8.4; what is of another type has no meaning to a reader. */
const TYPES = new Set(
  'Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct P H1 H2 H3 H4 H5 H6 L LI Lbl LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference Code Link Annot Figure Formula Form Strong Em'.split(
    ' ',
  ),
);

test.each(DOCUMENTS)('%s', async (_, make) => {
  const document = make();
  const { pdf } = await renderPdf(document, {}, engine);
  const file = readTags(pdf);
  expect(pdfDamage(pdf)).toBe('');
  expect({ ...faultsOfFile(file, document), ...faultsOfTree(file) }).toEqual({});
});

test('a print that is not accessible is found out', async () => {
  const main =
    '= One\n=== Three\n#image("/pictures/1.png")\n#table(columns: 2, [a], [b], table.cell(colspan: 2)[c])\n#pdf.artifact[x]';
  const pictures = [{ path: '/pictures/1.png', data: PHOTO.data }];
  const job = { main, settings: '{}', pictures, standard: '1.7', timestamp: 0 };
  const file = readTags((await engine.typeset(job)).pdf);
  const found = { ...faultsOfFile(file, { ...everyKind(), language: 'de' }), ...faultsOfTree(file) };
  expect(Object.keys(found)).toEqual([
    'does not show its title',
    'is in another language',
    'does not name the standard',
    'has no title',
    'headings skip a level',
    'picture says nothing',
    'picture has no place',
    'table has no head',
  ]);
});

/** Faults by what they are, each with where; empty where there are none. */
type Faults = Readonly<Record<string, readonly string[]>>;

const faults = (found: Readonly<Record<string, readonly string[]>>): Faults =>
  Object.fromEntries(Object.entries(found).filter(([, where]) => where.length > 0));

function faultsOfFile(
  { catalog, pages, metadata, dictionary, at }: TaggedPdf,
  { language }: GuideDocument,
): Faults {
  const isTrue = (key: string, inside: string): boolean => dictionary(catalog[key])[inside] === true;
  return faults({
    'is not said to be tagged': isTrue('/MarkInfo', '/Marked') ? [] : ['catalog'],
    'has suspect tags': isTrue('/MarkInfo', '/Suspects') ? ['catalog'] : [],
    'does not show its title': isTrue('/ViewerPreferences', '/DisplayDocTitle') ? [] : ['catalog'],
    'is in another language': String(catalog['/Lang']).startsWith(`u:${language}`)
      ? []
      : [String(catalog['/Lang'])],
    'has no bookmarks': at(dictionary(catalog['/Outlines'])['/First']) ? [] : ['catalog'],
    'does not name the standard': /pdfuaid:part(?:>|=")1/.test(metadata) ? [] : ['metadata'],
    'has no title': /<dc:title>.*\S.*<\/dc:title>/s.test(metadata) ? [] : ['metadata'],
    'page is not in the tree': pages.flatMap((page, i) =>
      typeof page['/StructParents'] === 'number' ? [] : [`${i}`],
    ),
    'page goes through links out of order': pages.flatMap((page, i) =>
      page['/Annots'] && page['/Tabs'] !== '/S' ? [`${i}`] : [],
    ),
  });
}

function faultsOfTree({ roots, pieces }: TaggedPdf): Faults {
  const all = walkTags(roots);
  const of = (...types: readonly string[]): Tag[] => all.filter(({ type }) => types.includes(type));
  const ids = new Set(all.flatMap(({ id }) => id ?? []));
  const claimed = all.flatMap(({ content }) => content);
  const marked = pieces.flatMap(({ page, id }) => (id === undefined ? [] : [`${page}:${id}`]));
  const children = (tag: Tag, ...types: readonly string[]): Tag[] =>
    tag.children.filter(({ type }) => types.includes(type));
  return faults({
    'root is no document':
      roots.length === 1 && roots[0]?.type === 'Document' ? [] : roots.map(({ type }) => type),
    'type says nothing': all.flatMap(({ type }) => (TYPES.has(type) ? [] : [type])),
    'is neither read nor an artifact': pieces.flatMap(({ page, id, isArtifact }) =>
      id === undefined && !isArtifact ? [`page ${page}`] : [],
    ),
    'is read twice': twice(claimed),
    'is marked and not in the tree': without(marked, claimed),
    'is in the tree and not on the page': without(claimed, marked),
    'headings skip a level': skipped(of('H1', 'H2', 'H3', 'H4', 'H5', 'H6')),
    'picture says nothing': of('Figure').flatMap(({ alt }) => (alt?.trim() ? [] : ['Figure'])),
    'picture has no place': of('Figure').flatMap(({ attributes }) => (attributes['/BBox'] ? [] : ['Figure'])),
    'list does not say how it counts': of('L').flatMap(({ attributes, children: items }) =>
      items.some((item) => children(item, 'Lbl').length > 0) && attributes['/ListNumbering'] === undefined
        ? ['L']
        : [],
    ),
    'list holds something else': of('L').flatMap(({ children: items }) =>
      items.flatMap(({ type }) => (type === 'LI' || type === 'Caption' || type === 'L' ? [] : [type])),
    ),
    'item has no body': of('LI').flatMap((item) => (children(item, 'LBody').length > 0 ? [] : ['LI'])),
    'head of a table has no scope': of('TH').flatMap(({ attributes }) =>
      attributes['/Scope'] ? [] : ['TH'],
    ),
    'table has no head': of('Table').flatMap((table) =>
      walkTags([table]).some(({ type }) => type === 'TH') ? [] : ['Table'],
    ),
    'cell names a head that is not there': of('TH', 'TD').flatMap(({ attributes }) =>
      (Array.isArray(attributes['/Headers']) ? attributes['/Headers'] : []).flatMap((name) =>
        ids.has(String(name).replace(/^[ub]:/, '')) ? [] : [String(name)],
      ),
    ),
    'rows are not of one width': of('Table').flatMap((table) => {
      const widths = new Set(widthsOf(walkTags([table]).filter(({ type }) => type === 'TR')));
      return widths.size > 1 ? [[...widths].join(' and ')] : [];
    }),
  });
}

function twice(places: readonly string[]): string[] {
  const seen = new Set<string>();
  return places.filter((place) => seen.has(place) || !seen.add(place));
}

const without = (places: readonly string[], others: readonly string[]): string[] => {
  const known = new Set(others);
  return places.filter((place) => !known.has(place));
};

/** The first heading is of the first level, and no later one is more than one level below that before it. */
function skipped(headings: readonly Tag[]): string[] {
  const levels = headings.map(({ type }) => Number(type.slice(1)));
  return levels.flatMap((level, i) =>
    level > (levels[i - 1] ?? 0) + 1 ? [`H${level} as heading ${i + 1}`] : [],
  );
}

/** How many columns each row takes, with cells that reach into it from above. */
function widthsOf(rows: readonly Tag[]): number[] {
  const reaching: number[] = [];
  return rows.map((row, at) => {
    let width = reaching[at] ?? 0;
    for (const cell of row.children) {
      const across = Number(cell.attributes['/ColSpan'] ?? 1);
      width += across;
      for (let down = 1; down < Number(cell.attributes['/RowSpan'] ?? 1); down++)
        reaching[at + down] = (reaching[at + down] ?? 0) + across;
    }
    return width;
  });
}
