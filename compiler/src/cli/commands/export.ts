// `baywright export`: checked procedures and catalogues as data for other programs.

import { csvText } from '../../desk/csv.js';
import { checkedModel } from '../../desk/model.js';
import type { CheckedModel } from '../../desk/model-schema.js';
import type { Table } from '../../desk/tables.js';
import { choice, defineCommand, PATHS, text } from '../command.js';
import { deliver } from '../given.js';
import { collect, troubleLines } from '../libraries.js';
import { guideShelf } from '../publish.js';

const TABLES = ['model', 'figures', 'specs', 'pull'] as const;

export default defineCommand({
  name: 'export',
  summary: 'write checked procedures as JSON, specs and pull lists as CSV',
  docs: `Writes what the checker knows. \`model\` is everything as JSON, in the form of schemas/export.schema.json: entries with their quantities in SI units, the work line by line, how many findings. The others are CSV: \`figures\` has one row for each figure, \`specs\` one for each entry in the columns that \`baywright import\` reads, \`pull\` what the parts counter hands out for each procedure.

Files with errors are written too, with the number of their errors. The exit code is 0 when all could be read.`,
  takes: [PATHS],
  options: {
    what: choice('-w, --what <table>', 'what is written', TABLES, 'model'),
    out: text('-o, --out <file>', 'where to write it; standard output where not given'),
  },
  examples: [
    ['baywright export > library.json', 'the whole library as JSON'],
    ['baywright export catalogue --what specs --out specs.csv', 'specifications for a spreadsheet'],
    ['baywright export FH-12.bay --what pull', 'the pull list of one procedure'],
  ],
  async run({ shell, paintErr }, paths, { what, out }) {
    const { shelves, troubles } = collect(shell, paths);
    const tables: Table[] = [];
    const models: CheckedModel[] = [];
    for (const shelf of shelves) {
      const analyses = shelf.files.flatMap((path) => {
        const analysis = shelf.library.analyse(path);
        if (what === 'model' && analysis !== undefined) {
          models.push(checkedModel(analysis));
          shelf.library.release(path);
        }
        return analysis ?? [];
      });
      if (what === 'model') continue;
      const { figureTable, pullTable, specTable } = await import('../../desk/tables.js');
      tables.push(
        what === 'figures'
          ? figureTable(analyses)
          : what === 'specs'
            ? specTable(analyses)
            : pullTable(analyses, guideShelf(shell, shelf)),
      );
    }
    const written =
      what === 'model' ? `${JSON.stringify({ format: 1, files: models }, undefined, 2)}\n` : csvOf(tables);
    deliver(shell, out, written);
    shell.err.write(troubleLines(troubles, paintErr));
    return troubles.length > 0 ? 2 : 0;
  },
});

/** Tables of several libraries as one; a column that one of them lacks is empty there. */
function csvOf(tables: readonly Table[]): string {
  const columns = [...new Set(tables.flatMap((table) => table.columns))];
  const rows = tables.flatMap((table) => {
    const at = columns.map((column) => table.columns.indexOf(column));
    return table.rows.map((row) => at.map((i) => row[i] ?? ''));
  });
  return csvText(columns, rows);
}
