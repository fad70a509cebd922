// What `build` says of its work: a few lines for a reader, or data for a program.
import type { Context } from '../command.js';
import { fileName, join, relativeTo } from '../paths.js';
import { plural } from '../report/text.js';
import type { Result } from './jobs.js';
import type { LeftOver } from './left-over.js';

/** What is said of a procedure: what was found, what was written. */
export function lineOf(
  { shell, paint }: Context,
  { path: source, state, counts, files, entry, notes, isKept }: Result,
): string {
  const { number, title, status } = entry;
  const name = `${paint.bold(number === '?' ? fileName(source) : number)} ${title}`;
  const said = notes.map((note) => `  ${paint.yellow('note:')} ${note}`);
  if (state === 'refused')
    return `${[`${name}: ${paint.red(`refused, ${plural(counts.error, 'error')}`)}`, ...said].join('\n')}\n`;
  if (state === 'passed over') return `${name}: passed over, ${notes.join(', ')}\n`;
  if (state === 'failed')
    return `${name}: ${paint.red('failed')}\n${notes.map((note) => `  ${note}\n`).join('')}`;
  const checked = [
    status === 'released' ? '' : paint.yellow(status),
    counts.warning > 0 ? plural(counts.warning, 'warning') : '',
    counts.question > 0 ? plural(counts.question, 'question') : '',
    isKept ? 'nothing new' : '',
  ].filter((part) => part !== '');
  const isInOrder = checked.length === (isKept ? 1 : 0);
  const head = `${name}: ${(isInOrder ? ['in order', ...checked] : checked).join(', ')}`;
  const lines = files.map(
    ({ path, pages }) =>
      `  ${relativeTo(shell.folder, path)}${pages === undefined ? '' : ` (${plural(pages, 'page')})`}`,
  );
  return `${[head, ...lines, ...said].join('\n')}\n`;
}

export function summary({ shell }: Context, results: readonly Result[], pages: readonly string[]): string {
  if (results.length === 0) return 'No procedures here: nothing was made.\n';
  const made = results.filter(({ isKept }) => !isKept);
  const count = (state: Result['state']): number => made.filter((result) => result.state === state).length;
  const files = made.reduce((sum, result) => sum + result.files.length, 0);
  const said = [
    `${count('written')} written (${plural(files, 'file')})`,
    ...(made.length < results.length ? [`${results.length - made.length} with nothing new`] : []),
    `${count('refused')} refused`,
    ...(count('failed') > 0 ? [`${count('failed')} failed`] : []),
  ];
  const index = pages.map((page) => `Open ${relativeTo(shell.folder, page)} in a browser to see them all.\n`);
  return `${plural(results.length, 'procedure')}: ${said.join(', ')}.\n${index.join('')}`;
}

export function asData(
  results: readonly Result[],
  pages: readonly string[],
  old: readonly LeftOver[],
): unknown {
  return {
    procedures: results.map(({ shelf, path: source, state, counts, files, entry, notes, isKept }) => ({
      number: entry.number === '?' ? null : entry.number,
      title: entry.title,
      source: join(shelf.root, source),
      state,
      new: !isKept,
      ...counts,
      files: files.map(({ path, pages: count }) => ({
        path,
        ...(count === undefined ? {} : { pages: count }),
      })),
      notes,
    })),
    index: pages,
    older: old.map(({ path, source }) => ({ path, source })),
  };
}
