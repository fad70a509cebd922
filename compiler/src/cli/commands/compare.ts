// `baywright compare`: what changed between two editions, in shop terms, with the revision line to go with it.
import { type Change, changeText, revisionLine } from '@baywright/language';
import { dayOf } from '@baywright/server/day';
import { changesOf, openSide, pairs, type SideFile } from '../../desk/editions.js';
import { type Context, choice, count, defineCommand } from '../command.js';

export default defineCommand({
  name: 'compare',
  summary: 'tell what changed between two editions',
  docs: `Tells what changed between OLD and NEW with the old and the new figure, and drafts the revision line. Layout, comments, names of entries and the way a number is written are no change. What a procedure takes from a catalogue counts, what is in its pictures, and its translations.

Each side is a file, a folder, a procedure by number, an issue (FH-12@4, FH-12@issued) or, where there is git, a revision of it (REVISION:path). Without NEW, OLD is a number and its last issue is compared with what stands now.

The exit code is 1 when something changed.`,
  takes: [
    { name: 'old', docs: 'the older side' },
    { name: 'new', docs: 'the newer side', optional: true },
  ],
  options: {
    format: choice('-f, --format <form>', 'how it is written', ['text', 'json'], 'text'),
    limit: count('--limit <count>', 'the most changes shown of one guide as text; 0 for all', 40),
  },
  examples: [
    ['baywright compare FH-12', 'the last issue with what stands now'],
    ['baywright compare FH-12@3 FH-12@4', 'two issues'],
    ['baywright compare ../last-year procedures', 'two folders'],
    ['baywright compare HEAD~1:procedures procedures', 'with an older revision of git'],
  ],
  run(context, [first = '', second], { format, limit }) {
    const { shell } = context;
    const [old, now] =
      second === undefined
        ? [openSide(shell, `${first}@issued`), openSide(shell, first)]
        : [openSide(shell, first), openSide(shell, second)];
    const compared = pairs(old, now).map((pair) => compareFiles(pair.old, pair.new));
    const changed = compared.filter(({ state, changes }) => state !== 'both' || changes.length > 0);
    const day = dayOf(shell.now());
    if (format === 'json') {
      const data = changed.map(({ changes, ...rest }) => ({
        ...rest,
        changes: changes.map((change) => ({ ...change, line: change.line + 1, text: changeText(change) })),
      }));
      shell.out.write(`${JSON.stringify({ old: old.label, new: now.label, changed: data }, undefined, 2)}\n`);
    } else if (changed.length === 0) shell.out.write(`No change from ${old.label} to ${now.label}.\n`);
    else shell.out.write(`${changed.map((one) => report(context, one, limit, day)).join('\n\n')}\n`);
    return changed.length === 0 ? 0 : 1;
  },
});

interface Compared {
  readonly number: string;
  readonly title: string;
  readonly file: string;
  readonly state: 'both' | 'new' | 'gone';
  readonly changes: readonly Change[];
}

function compareFiles(old: SideFile | undefined, now: SideFile | undefined): Compared {
  const { number, title, path } = now ?? old ?? { number: '', title: '', path: '' };
  const state = old === undefined ? 'new' : now === undefined ? 'gone' : 'both';
  const changes = old !== undefined && now !== undefined ? changesOf(old, now) : [];
  return { number, title, file: path, state, changes };
}

function report(
  { paint }: Context,
  { number, title, file, state, changes }: Compared,
  limit: number,
  day: string,
): string {
  const head = `${paint.bold(number === '' ? file : number)} ${title}`;
  if (state !== 'both') return `${head}: ${state === 'new' ? 'is new' : 'is gone'}`;
  const shown = limit === 0 ? changes : changes.slice(0, limit);
  const left = changes.length - shown.length;
  return [
    head,
    ...shown.map((change) => `  ${changeText(change)}`),
    ...(left > 0 ? [`  ${left} more; --limit 0 shows all`] : []),
    ...(number === '' ? [] : [paint.dim(`  ${revisionLine('?', day, changes)}`)]),
  ].join('\n');
}
