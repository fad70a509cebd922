// `baywright master-list`: the current revision of every guide.
import { type Language, type PhraseId, phrase, phraseText } from '@baywright/language';
import { dayOf } from '@baywright/server/day';
import { csvText } from '../../desk/csv.js';
import { findProcedures, shelvesHere } from '../../desk/find.js';
import { doubtfulHistory } from '../../desk/issue-store.js';
import { type MasterRow, masterList, sinceIssue } from '../../desk/master-list.js';
import { choice, defineCommand, PATHS, text } from '../command.js';
import { deliver } from '../given.js';

const COLUMNS = ['Number', 'Title', 'Issued', 'Day', 'By', 'Copies', 'State', 'Since then', 'File'] as const;

/** The same columns on the sheet, in the language of the shop. */
const SHEET_COLUMNS = [
  'number',
  'title-head',
  'issued-head',
  'date',
  'by-head',
  'copies-head',
  'state-head',
  'since-head',
  'file-head',
] as const satisfies readonly PhraseId[];

const STATE_WORDS: Readonly<Record<MasterRow['state'], PhraseId>> = {
  'never issued': 'state-never',
  current: 'state-current',
  changed: 'state-changed',
  withdrawn: 'state-withdrawn',
  'file is gone': 'state-gone',
};

export default defineCommand({
  name: 'master-list',
  summary: 'list the current revision of every guide',
  docs: `Lists every procedure with the revision that is in the workshop, the day and the initials it was released under, where its printed copies hang, and what changed in the library since.

The exit code is 0 whatever the list says, and 2 when what was issued is not as it was written.`,
  takes: [PATHS],
  options: {
    format: choice('-f, --format <form>', 'how it is written', ['text', 'json', 'csv', 'html'], 'text'),
    out: text('-o, --out <file>', 'where to write it; standard output where not given'),
  },
  examples: [
    ['baywright master-list', 'on the screen'],
    ['baywright master-list --format html --out master-list.html', 'to print and put up'],
    ['baywright master-list --format csv > guides.csv', 'for a spreadsheet'],
  ],
  async run({ shell, paint, paintErr }, paths, { format, out }) {
    const lists = shelvesHere(shell, paths).map((shelf) => {
      const own = findProcedures(shell, paths).filter((one) => one.shelf.root === shelf.root);
      return masterList(shell, shelf, own);
    });
    const rows = lists.flatMap((list) => list.rows);
    const problems = lists.flatMap((list) => list.problems);
    const data = async (): Promise<string> => {
      if (format === 'json') return `${JSON.stringify(rows.map(asData), undefined, 2)}\n`;
      if (format === 'csv')
        return csvText(
          COLUMNS,
          rows.map((row) => cells(row, row.state, 'en')),
        );
      if (format === 'html') {
        const { sheetPage } = await import('../../desk/sheet-page.js');
        const settings = shelvesHere(shell, paths)[0]?.settings;
        const language = settings?.languages[0] ?? 'en';
        return sheetPage({
          language,
          title: phrase('master-title', language),
          shop: settings?.shop.name ?? '',
          lead: [phraseText('master-lead', language, { day: dayOf(shell.now()) })],
          columns: SHEET_COLUMNS.map((id) => phrase(id, language)),
          rows: rows.map((row) => cells(row, phrase(STATE_WORDS[row.state], language), language)),
        });
      }
      return table(rows, paint.bold);
    };
    const written = await data();
    deliver(shell, out, written);
    if (problems.length > 0) shell.err.write(`${paintErr.red('baywright:')} ${doubtfulHistory(problems)}\n`);
    return problems.length > 0 ? 2 : 0;
  },
});

function cells(row: MasterRow, state: string, language: Language): string[] {
  const { number, title, issue, file } = row;
  const record = issue?.record;
  return [
    number,
    title,
    record === undefined ? '' : String(record.revision),
    record?.day ?? '',
    record?.by.join(', ') ?? '',
    record?.copies.join(', ') ?? '',
    state,
    sinceIssue(row, language),
    file ?? '',
  ];
}

function asData(row: MasterRow): unknown {
  const { issue, changes, ...rest } = row;
  return {
    ...rest,
    issued: issue?.record ?? null,
    changes: changes.length,
    since: sinceIssue(row),
  };
}

function table(rows: readonly MasterRow[], bold: (text: string) => string): string {
  if (rows.length === 0) return 'No procedures here.\n';
  const width = (texts: readonly string[]): number => Math.max(...texts.map((one) => one.length));
  const numbers = width(rows.map(({ number }) => number));
  const lines = rows.map((row) => {
    const { issue, state, status } = row;
    const said = sinceIssue(row);
    const held =
      issue === undefined
        ? `${status}, ${state}`
        : `revision ${issue.record.revision} of ${issue.record.day}, ${state}`;
    const since = said === '' ? [] : [`  ${' '.repeat(numbers)}${said}`];
    return [`${bold(row.number.padEnd(numbers))}  ${row.title}: ${held}`, ...since].join('\n');
  });
  return `${lines.join('\n')}\n`;
}
