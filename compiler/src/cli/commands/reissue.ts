// `baywright reissue`: what a change in the library asks of the guides in the workshop.
import {
  changeText,
  type Language,
  type PhraseId,
  phrase,
  phraseText,
  type Settings,
} from '@baywright/language';
import { dayOf } from '@baywright/server/day';
import { findProcedures, shelvesHere } from '../../desk/find.js';
import { doubtfulHistory } from '../../desk/issue-store.js';
import { isWithdrawing, type MasterRow, masterList, sinceIssue } from '../../desk/master-list.js';
import { guidesToReissue, type Reissue, revisionWords, withRevision } from '../../desk/reissue.js';
import { type Context, defineCommand, flag, PATHS, text } from '../command.js';
import { join, relativeTo } from '../paths.js';
import { plural } from '../report/text.js';

export default defineCommand({
  name: 'reissue',
  summary: 'list the guides to issue again and the copies to pull',
  docs: `After a change, in a catalogue or in a procedure: lists the guides in the workshop that the library has moved away from, with what changed, and drafts their revision line; guides in which the same changed share one. With --write the line goes into each procedure, which becomes a draft again until it is proved and released; one that is withdrawn stays so.

A slip says which printed copies to pull. The exit code is 1 when there are guides to issue again. Nothing is listed while what was issued is not as it was written.`,
  takes: [PATHS],
  options: {
    write: flag('--write', 'write the revision line into each procedure and set it back to draft'),
    words: text('--words <sentence>', 'what the revision line says, in place of the draft'),
    slip: text('--slip <file>', 'write the slip of copies to pull as a page to print'),
  },
  examples: [
    ['baywright reissue', 'after a torque in the catalogue changed'],
    ['baywright reissue --slip pull.html', 'a slip for the one who walks round the bays'],
    [
      'baywright reissue --write --words "Hub bolt torque raised to 115 N·m."',
      'the same line in every guide',
    ],
  ],
  async run(context, paths, { write, words, slip }) {
    const { shell, paintErr } = context;
    const procedures = findProcedures(shell, paths);
    const shelves = shelvesHere(shell, paths);
    const problems: string[] = [];
    const guides = shelves.flatMap((shelf) => {
      const own = procedures.filter((one) => one.shelf.root === shelf.root);
      const list = masterList(shell, shelf, own);
      problems.push(...list.problems);
      return guidesToReissue(list.rows, own);
    });
    if (problems.length > 0) {
      shell.err.write(`${paintErr.red('baywright:')} ${doubtfulHistory(problems)}\n`);
      return 2;
    }
    if (guides.length === 0) {
      shell.out.write('Every guide in the workshop says what the library says.\n');
      return 0;
    }
    const given = words?.trim().replace(/\s+/g, ' ');
    const lines =
      given === undefined
        ? revisionWords(guides, shelves[0]?.settings.languages[0])
        : new Map([[given, guides]]);
    const day = dayOf(shell.now());
    shell.out.write(`${guides.map((guide) => told(context, guide)).join('\n')}\n\n`);
    for (const [line, own] of lines) shell.out.write(`Revision line for ${whose(own, guides)}: ${line}\n`);
    if (write) writeLines(context, lines, day);
    if (slip !== undefined) {
      const file = shell.resolve(slip);
      shell.write(file, await slipPage(guides, shelves[0]?.settings, day));
      shell.out.write(`Slip: ${relativeTo(shell.folder, file)}\n`);
    }
    return 1;
  },
});

function told({ paint }: Context, { row, next, isRaised }: Reissue): string {
  const held = row.issue?.record;
  const copies = held === undefined || held.copies.length === 0 ? '' : `; pull ${held.copies.join(', ')}`;
  const raised = isRaised ? ', its line is written' : '';
  const { shown, left } = shownChanges(row);
  return [
    `${paint.bold(row.number)} ${row.title}: revision ${held?.revision} → ${next}${raised}${copies}`,
    ...shown.map((text) => `  ${text}`),
    ...(left > 0 ? [`  and ${left} more`] : []),
  ].join('\n');
}

const MOST_SHOWN = 5;

/** The first changes of a guide in words, and how many more there are. */
function shownChanges(row: MasterRow, language?: Language): { shown: string[]; left: number } {
  if (isWithdrawing(row)) return { shown: [sinceIssue(row, language)], left: 0 };
  const shown = row.changes.slice(0, MOST_SHOWN).map((change) => changeText(change, language));
  return { shown, left: row.changes.length - shown.length };
}

/** `it`, `all 6`, or the numbers of some. */
function whose(own: readonly Reissue[], all: readonly Reissue[]): string {
  if (own.length < all.length) return own.map(({ row }) => row.number).join(', ');
  return all.length === 1 ? 'it' : `all ${all.length}`;
}

function writeLines({ shell }: Context, lines: ReadonlyMap<string, readonly Reissue[]>, day: string): void {
  const open = [...lines].flatMap(([line, own]) =>
    own.filter(({ isRaised }) => !isRaised).map((guide) => ({ ...guide, line })),
  );
  for (const { row, procedure, next, line } of open) {
    const file = join(procedure.shelf.root, procedure.analysis.path);
    shell.write(file, withRevision(procedure.analysis.model, next, day, line));
    const status = row.status === 'withdrawn' ? row.status : 'draft';
    shell.out.write(`${relativeTo(shell.folder, file)}: revision ${next}, ${status}\n`);
  }
  shell.out.write(`${plural(open.length, 'procedure')} changed; sign and issue them when they are proved.\n`);
}

/** Whether a new issue follows: not of what is withdrawn. */
function nextOf(guides: readonly Reissue[]): PhraseId {
  const withdrawn = guides.filter(({ row }) => isWithdrawing(row)).length;
  return withdrawn === 0 ? 'pull-next' : withdrawn === guides.length ? 'pull-none' : 'pull-mixed';
}

const SLIP_COLUMNS = [
  'done-head',
  'number',
  'title-head',
  'pull-revision',
  'of-head',
  'copies-at',
  'what-changed',
] as const satisfies readonly PhraseId[];

/** The slip is in the language of the shop. */
async function slipPage(
  guides: readonly Reissue[],
  settings: Settings | undefined,
  day: string,
): Promise<string> {
  const { sheetPage } = await import('../../desk/sheet-page.js');
  const language = settings?.languages[0] ?? 'en';
  return sheetPage({
    language,
    title: phrase('pull-these', language),
    shop: settings?.shop.name ?? '',
    lead: [phraseText('pull-lead', language, { day }), phrase(nextOf(guides), language)],
    columns: SLIP_COLUMNS.map((id) => phrase(id, language)),
    rows: guides.map(({ row }) => {
      const held = row.issue?.record;
      return [
        '☐',
        row.number,
        row.title,
        String(held?.revision ?? ''),
        held?.day ?? '',
        held?.copies.join(', ') ?? '',
        shownChanges(row, language).shown.join('; '),
      ];
    }),
  });
}
