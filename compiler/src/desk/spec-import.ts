// Specifications from a spreadsheet into a catalogue: every row is written as an entry, read back by the language itself
// and judged by its checks; a row that does not pass is told by its line in the table.
import {
  FASTENER_IDENTITY,
  type Finding,
  format,
  type Library,
  nameSpan,
  SECTION_BY_WORD,
  type Thing,
} from '@baywright/language';
import { parse } from 'csv-parse/sync';
import * as z from 'zod';
import { COLUMN_WORDS, WHEN } from './spec-columns.js';

/** Which column holds what: `{ "Bolt": "title", "Torque Nm": { "to": "torque", "unit": "N·m" } }`. */
export const columnMapSchema = z.record(
  z.string().min(1).describe('The heading of a column.'),
  z.union([
    z
      .string()
      .min(1)
      .describe('section, name, title, when, count, thread or a clause word; "-" leaves the column out.'),
    z.strictObject({
      to: z.string().min(1).describe('As above.'),
      unit: z.string().min(1).describe('The unit that its bare numbers are in.'),
    }),
  ]),
);
export type ColumnMap = z.infer<typeof columnMapSchema>;

/** The published JSON Schema of `import --columns`. */
export function columnMapJsonSchema(): unknown {
  return {
    title: 'Columns of a table of specifications',
    ...z.toJSONSchema(columnMapSchema, { target: 'draft-2020-12' }),
  };
}

export interface BadRow {
  /** Line of the table, from 1. */
  readonly line: number;
  readonly problem: string;
}

export interface SpecRow {
  readonly line: number;
  readonly section: string;
  readonly name: string;
  /** The entry as text, indented as in a section, with the line of the table that each of its lines comes from. */
  readonly text: string;
  readonly origins: readonly number[];
}

const NAME = /^[\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)*$/u;

/** The rows of a table as entries, and those that cannot be any. A heading that is not known is a fault of the table. */
export function readSpecs(
  csv: string,
  map: ColumnMap,
  usual: string,
): { rows: SpecRow[]; bad: BadRow[]; problem?: string } {
  const bad: BadRow[] = [];
  const delimiter = delimiterOf(csv);
  let records: { info: { lines: number }; record: readonly string[] }[];
  try {
    records = parse(csv, {
      bom: true,
      info: true,
      delimiter,
      relax_column_count: true,
      // `3/4" hex` is no quoted cell.
      relax_quotes: true,
      skip_empty_lines: true,
      trim: true,
    }) as unknown as typeof records;
  } catch (error) {
    return { rows: [], bad, problem: unreadable(error) };
  }
  const [head, ...body] = records;
  if (head === undefined) return { rows: [], bad, problem: 'the table is empty' };
  const columns = head.record.map((heading) => target(heading, map));
  const unknown = head.record.filter((_, i) => columns[i] === undefined);
  if (unknown.length > 0) {
    const problem = `no clause goes by the heading ${unknown.map((one) => `“${one}”`).join(', ')}; name its column in --columns, or "-" to leave it out`;
    return { rows: [], bad, problem };
  }
  const rows = new Map<string, SpecRow>();
  for (const { info, record } of body) {
    const line = info.lines - record.join('').split(/\r\n|\n|\r/).length + 1;
    const cells = new Map(
      columns.map((column, i) => {
        const cell = (record[i] ?? '').trim();
        const value = delimiter !== ',' && isFigure(column?.to) ? withPoint(cell) : cell;
        return [column?.to ?? '-', withUnit(value, column?.unit)];
      }),
    );
    const made =
      record.length > columns.length ? 'has more cells than there are headings' : rowOf(cells, usual);
    if (typeof made === 'string') {
      bad.push({ line, problem: made });
      continue;
    }
    const { section, name, title, lines } = made;
    const above = rows.get(`${section} ${name}`);
    if (!isVariant(cells)) {
      const text = [`  ${name}: ${title}`, ...lines];
      if (above !== undefined) {
        bad.push({ line, problem: `name: \`${name}\` stands in line ${above.line} already` });
        continue;
      }
      rows.set(`${section} ${name}`, {
        line,
        section,
        name,
        text: text.join('\n'),
        origins: text.map(() => line),
      });
    } else if (above === undefined) {
      bad.push({ line, problem: `${WHEN}: no row above says what \`${name}\` is whatever the variant` });
    } else {
      const text = [above.text, ...lines].join('\n');
      rows.set(`${section} ${name}`, {
        ...above,
        text,
        origins: [...above.origins, ...lines.map(() => line)],
      });
    }
  }
  return { rows: [...rows.values()], bad };
}

/** Values that hold on a variant only; `only when` says on which there is such a thing at all. */
const isVariant = (cells: ReadonlyMap<string, string>): boolean => {
  const when = cells.get(WHEN) ?? '';
  return when !== '' && !/^only\b/i.test(when);
};

/** Spreadsheets of many countries part cells by semicolons, since their numbers have commas. */
function delimiterOf(csv: string): string {
  const first = /^[^\r\n]*/.exec(csv)?.[0] ?? '';
  const counts = [',', ';', '\t'].map((mark) => ({ mark, count: first.split(mark).length }));
  return counts.reduce((a, b) => (b.count > a.count ? b : a)).mark;
}

function target(heading: string, map: ColumnMap): { to: string; unit?: string } | undefined {
  const given = Object.hasOwn(map, heading) ? map[heading] : undefined;
  const wanted = typeof given === 'string' ? { to: given } : (given ?? { to: heading.toLowerCase() });
  const exact = KNOWN.find((word) => word.toLowerCase() === wanted.to.toLowerCase());
  return exact === undefined ? undefined : { ...wanted, to: exact };
}

const KNOWN: readonly string[] = ['-', 'section', 'name', 'title', WHEN, ...COLUMN_WORDS.clauses];

const withUnit = (cell: string, unit: string | undefined): string =>
  unit !== undefined && /\d$/.test(cell) ? `${cell} ${unit}` : cell;

/** Why the table cannot be taken apart, in words for whoever made it. */
function unreadable(error: unknown): string {
  const { code, lines } = error as { readonly code?: unknown; readonly lines?: unknown };
  if (code === 'CSV_QUOTE_NOT_CLOSED')
    return `a quotation mark is opened and never closed (line ${String(lines)})`;
  return error instanceof Error ? error.message : String(error);
}

/** Columns of figures; in the others a comma is a comma. */
const isFigure = (word: string | undefined): boolean =>
  word === 'thread' ||
  word === 'class' ||
  ['spec', 'number'].includes(COLUMN_WORDS.shapeOf(word ?? '') ?? '');

/** `22,5` where cells are parted otherwise; `1,250` may be either and is left to the language, which asks. */
const withPoint = (cell: string): string =>
  cell.replace(/(?<![\d.,])(\d+),(\d{1,2}|\d{4,})(?![\d.,])/g, '$1.$2');

interface ReadRow {
  readonly section: string;
  readonly name: string;
  readonly title: string;
  readonly lines: readonly string[];
}

function rowOf(cells: ReadonlyMap<string, string>, usual: string): ReadRow | string {
  const cell = (word: string): string => cells.get(word) ?? '';
  if ([...cells.values()].some((value) => /[\r\n]/.test(value))) return 'has a cell of several lines';
  const title = cell('title');
  const name = cell('name') === '' ? nameFrom(title) : cell('name');
  const section = cell('section') === '' ? usual : cell('section').toLowerCase();
  if (title === '' && !isVariant(cells)) return 'title: is empty';
  if (!NAME.test(name))
    return `name: “${name}” is no name; small letters and digits joined by hyphens are, as in hub-bolt`;
  if (!COLUMN_WORDS.sections.includes(section))
    return `section: “${section}” is none; there are ${COLUMN_WORDS.sections.join(', ')}`;
  const count = cell('count');
  if (count !== '' && count !== '?' && !/^\d+$/.test(count)) return `count: “${count}” is no whole number`;
  const when = guardOf(cell(WHEN));
  const all = linesOf(cells, section);
  // One line is enough to say on which variants there is such a thing.
  const guarded = isVariant(cells) ? all : all.slice(0, 1);
  const lines = all.map((line) => `    ${line}${when !== '' && guarded.includes(line) ? `, ${when}` : ''}`);
  return { section, name, title, lines };
}

const guardOf = (cell: string): string =>
  cell === '' || /^(?:only )?when\b/.test(cell) ? cell : `when ${cell}`;

const nameFrom = (title: string): string =>
  (
    title
      .normalize('NFKD')
      .replace(/\p{M}/gu, '')
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu) ?? []
  ).join('-');

/** What a fastener is stands on one line, its torque with source and order on the next, the rest each on its own. */
const WITH_TORQUE = ['prevailing', 'order', 'threadlocker', 'lubricant', 'dry', 'oiled', 'per'];

function linesOf(cells: ReadonlyMap<string, string>, section: string): string[] {
  const has = (word: string): boolean => (cells.get(word) ?? '') !== '';
  const clause = (word: string): string[] => {
    const value = cells.get(word) ?? '';
    if (value === '') return [];
    if (COLUMN_WORDS.shapeOf(word) === 'flag') return YES.test(value) ? [word] : [];
    const isQuoted = !value.startsWith('"') && (word === 'per' || (word === 'number' && /[,:]/.test(value)));
    return [`${word} ${isQuoted ? `"${value.replaceAll('"', '')}"` : value}`];
  };
  const isBolt = has('thread') || (has('count') && section === 'fasteners');
  const set = isBolt ? [`${cells.get('count') || '?'} of ${cells.get('thread') || '?'}`] : [];
  const identity = [...set, ...FASTENER_IDENTITY.flatMap(clause)];
  const torque = has('torque') ? [...clause('torque'), ...WITH_TORQUE.flatMap(clause)] : [];
  const told = new Set([
    ...(isBolt ? ['count', 'thread'] : ['thread']),
    ...FASTENER_IDENTITY,
    ...(has('torque') ? ['torque', ...WITH_TORQUE] : []),
  ]);
  const rest = COLUMN_WORDS.clauses.filter((word) => !told.has(word)).flatMap(clause);
  return [identity.join(', '), torque.join(', '), ...rest].filter((line) => line !== '');
}

const YES = /^(?:yes|y|x|1|true|ja|oui|s[ií])$/i;

/** A catalogue with entries at the end of their sections; a section that it lacks is added at its end. */
export function withEntries(text: string, rows: readonly SpecRow[]): string {
  const newline = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
  const lines = text.replace(/(?:\r\n|\n|\r)$/, '').split(/\r\n|\n|\r/);
  for (const section of [...new Set(rows.map((row) => row.section))]) {
    const own = rows.filter((row) => row.section === section).map((row) => row.text);
    const entries = formatted(section, own);
    const start = lines.findIndex((line) => line.trimEnd() === section);
    if (start < 0) lines.push('', section, ...entries);
    else lines.splice(endOfSection(lines, start), 0, ...entries);
  }
  return `${lines.join(newline)}${newline}`;
}

function formatted(section: string, entries: readonly string[]): string[] {
  const head = 'catalogue: Rows\n\n';
  const { text } = format(`${head}${section}\n${entries.join('\n')}\n`, 'rows.bay');
  return text.slice(head.length).trimEnd().split('\n').slice(1);
}

/** Behind the last line that is indented below the section. */
function endOfSection(lines: readonly string[], start: number): number {
  let end = start + 1;
  for (let i = start + 1; i < lines.length; i++) {
    const line = lines[i] ?? '';
    if (/^\S/.test(line) && SECTION_BY_WORD.has(line.trimEnd())) break;
    if (/^\s+\S/.test(line)) end = i + 1;
    else if (/^[^\s#]/.test(line)) break;
  }
  return end;
}

/** What the checker says of imported entries, row by row. `library` holds the catalogue with the entries in it. */
export function faultsOf(library: Library, path: string, rows: readonly SpecRow[]): BadRow[] {
  const analysis = library.analyse(path);
  if (analysis === undefined) return [];
  const { model, findings } = analysis;
  const byName = new Map<string, Thing[]>();
  for (const thing of model.things) byName.set(thing.name, [...(byName.get(thing.name) ?? []), thing]);
  return rows.flatMap((row) => {
    const same = byName.get(row.name) ?? [];
    if (same.length > 1) return [{ line: row.line, problem: `name: \`${row.name}\` is declared already` }];
    const entry = same[0]?.line;
    if (entry === undefined) return [{ line: row.line, problem: 'cannot be read as an entry' }];
    const at = nameSpan(same[0] as Thing);
    const own = findings.filter(
      ({ span, severity }) => GRAVE.has(severity) && span.start >= (at?.start ?? 0) && span.start < entry.end,
    );
    return own.map(({ code, message, span }) => {
      const above = model.tree.text.slice(at?.start ?? 0, span.start).split('\n').length - 1;
      return { line: row.origins[above] ?? row.line, problem: `${code} ${message}` };
    });
  });
}

const GRAVE: ReadonlySet<Finding['severity']> = new Set(['error', 'warning']);
