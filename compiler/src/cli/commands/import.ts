// `baywright import`: specifications from a spreadsheet into a catalogue.

import { SETTINGS_FILE } from '@baywright/language';
import { COLUMN_WORDS } from '../../desk/spec-columns.js';
import {
  type BadRow,
  type ColumnMap,
  columnMapSchema,
  faultsOf,
  readSpecs,
  withEntries,
} from '../../desk/spec-import.js';
import { choice, defineCommand, flag, text } from '../command.js';
import { openLibrary, SUFFIX } from '../libraries.js';
import { join, parent, relativeTo, upward } from '../paths.js';
import { plural } from '../report/text.js';
import { CannotRun, type Shell } from '../shell.js';

export default defineCommand({
  name: 'import',
  summary: 'take specifications from a CSV table into a catalogue',
  docs: `Reads a table with a heading row, one entry a row, and writes the entries at the end of their sections in the catalogue. Headings are \`section\`, \`name\`, \`title\`, \`count\`, \`thread\` and the words of clauses (torque, per, number …); a row with a condition under \`when\`, such as \`axle heavy\`, adds to the entry of its name above it. --columns names a JSON file that maps other headings, in the form of schemas/columns.schema.json. Without a name the title makes one. Where semicolons or tabs part the cells, figures may have a decimal comma.

Every row is judged by the checks of the language; each bad one is told by its line in the table. Nothing is written while there are bad rows, except with --good-only. The exit code is 1 when there were any.`,
  takes: [{ name: 'table', docs: 'a CSV file; cells are parted by commas, semicolons or tabs' }],
  options: {
    into: text('--into <catalogue>', 'the .bay file to write to; it is made when it is not there'),
    columns: text('--columns <file>', 'a JSON file that says which column holds what'),
    section: choice(
      '--section <word>',
      'the section of rows that name none',
      COLUMN_WORDS.sections,
      'fasteners',
    ),
    goodOnly: flag('--good-only', 'write the good rows and leave the bad ones out'),
    trial: flag('--trial', 'judge the rows and write nothing'),
  },
  examples: [
    ['baywright import bolts.csv --into catalogue/van.bay', 'a table with clause words as headings'],
    ['baywright import list.csv --columns columns.json --into catalogue/van.bay', 'with headings of its own'],
    ['baywright import more.csv --into catalogue/van.bay --trial', 'judge the rows alone'],
  ],
  run({ shell, paint }, [name = ''], { into, columns, section, goodOnly, trial }) {
    if (into === undefined) throw new CannotRun('the catalogue is missing; write --into catalogue/van.bay');
    const table = readFile(shell, name);
    const { rows, bad, problem } = readSpecs(table, readMap(shell, columns), section);
    if (problem !== undefined) throw new CannotRun(`${name}: ${problem}`);
    const file = shell.resolve(into);
    if (!file.endsWith(SUFFIX))
      throw new CannotRun(`${into} is no catalogue: its name must end in ${SUFFIX}`);
    const before = shell.kind(file) === undefined ? 'catalogue: Specifications\n' : readFile(shell, into);
    const root = upward(parent(file)).find((folder) => shell.kind(join(folder, SETTINGS_FILE)) === 'file');
    const judge = (text: string, made: typeof rows): BadRow[] => {
      const world: Shell = { ...shell, read: (path) => (path === file ? { text } : shell.read(path)) };
      const path = relativeTo(root ?? shell.folder, file);
      const { library } = openLibrary(world, root ?? shell.folder, root !== undefined, [path]);
      return faultsOf(library, path, made);
    };
    const faults = [...bad, ...judge(withEntries(before, rows), rows)].sort((a, b) => a.line - b.line);
    for (const fault of faults)
      shell.out.write(`${name}:${fault.line} ${paint.red('bad row')}: ${fault.problem}\n`);
    const good = rows.filter((row) => !faults.some((fault) => fault.line === row.line));
    const isWritten = !trial && good.length > 0 && (faults.length === 0 || goodOnly);
    if (isWritten) shell.write(file, withEntries(before, good));
    const count = new Set(faults.map((fault) => fault.line)).size;
    const done = isWritten ? `written to ${relativeTo(shell.folder, file)}` : 'good, nothing written';
    shell.err.write(
      `${plural(good.length, 'row')} ${done}${count > 0 ? `; ${plural(count, 'bad row')}` : ''}.\n`,
    );
    return faults.length > 0 ? 1 : 0;
  },
});

function readFile(shell: Shell, name: string): string {
  const reading = shell.read(shell.resolve(name));
  if ('problem' in reading) throw new CannotRun(`${name} ${reading.problem}`);
  return reading.text;
}

function readMap(shell: Shell, name: string | undefined): ColumnMap {
  if (name === undefined) return {};
  let value: unknown;
  try {
    value = JSON.parse(readFile(shell, name));
  } catch (error) {
    if (error instanceof CannotRun) throw error;
    throw new CannotRun(`${name} is not JSON`);
  }
  const parsed = columnMapSchema.safeParse(value);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  const heading = issue?.path[0];
  throw new CannotRun(
    heading === undefined
      ? `${name} is no map of columns; write { "Nm": { "to": "torque", "unit": "N·m" }, "Bolt": "title" }`
      : `${name}: “${String(heading)}” leads to no column; write "torque", or { "to": "torque", "unit": "N·m" } for bare numbers`,
  );
}
