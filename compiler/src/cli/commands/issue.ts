// `baywright issue`: puts released procedures into the workshop's hands and keeps what was handed out.
import { findProcedures, shelvesHere } from '../../desk/find.js';
import { type IssueResult, issueProcedure } from '../../desk/issue.js';
import { readStore } from '../../desk/issue-store.js';
import { type Context, defineCommand, flag, list } from '../command.js';
import { CannotRun } from '../shell.js';

export default defineCommand({
  name: 'issue',
  summary: 'issue released procedures and keep what was issued',
  docs: `Writes source, guides (HTML and PDF), the checked model and their hashes into the folder of issues, one folder a revision: whole or not at all. What was issued is never changed; when something in it is not as it was written, nothing more is issued until it is put back.

A procedure must be released (see \`baywright sign\`), without errors and without questions, with a revision newer than its last issue. Without a name, every released or withdrawn procedure that is not issued yet is. The exit code is 1 when one was refused.`,
  takes: [{ name: 'procedures', docs: 'numbers or paths', optional: true, many: true }],
  options: {
    copy: list('--copy <place>', 'where a printed copy will hang, "bay 2"; may be repeated'),
    trial: flag('--trial', 'ask the rules and write nothing'),
    verify: flag('--verify', 'only look whether all that was issued is as it was written'),
  },
  examples: [
    ['baywright issue FH-12 --copy "bay 1" --copy "bay 2"', 'one procedure, two printed copies'],
    ['baywright issue', 'all that is released and not issued yet'],
    ['baywright issue --verify', 'is the history untouched?'],
  ],
  async run(context, names, { copy, trial, verify }) {
    const { shell, paint } = context;
    if (verify) return verifyAll(context);
    const copies = copy.map((place) => place.trim().replace(/\s+/g, ' '));
    if (copies.includes('')) throw new CannotRun('--copy names no place; write --copy "bay 2"');
    const all = findProcedures(shell, names);
    const wanted =
      names.length > 0
        ? all
        : all.filter(({ analysis }) =>
            ['released', 'withdrawn'].includes(analysis.model.status?.status?.text ?? ''),
          );
    let refused = 0;
    let issued = 0;
    for (const procedure of wanted) {
      const result = await issueProcedure(shell, procedure, { copies, trial });
      if (result.state === 'refused') refused++;
      if (result.state === 'issued') issued++;
      if (result.state === 'current' && names.length === 0) continue;
      shell.out.write(`${paint.bold(procedure.number)} ${said(result, trial, copies)}\n`);
    }
    if (wanted.length === 0) shell.out.write('Nothing here is released.\n');
    else if (issued + refused === 0 && names.length === 0)
      shell.out.write('All that is released is issued.\n');
    return refused > 0 ? 1 : 0;
  },
});

function said(result: IssueResult, trial: boolean, copies: readonly string[]): string {
  switch (result.state) {
    case 'issued': {
      const { revision, folder, change, pull } = result;
      const old = pull === undefined ? '' : `\n  pull revision ${pull.revision}: ${pull.copies.join(', ')}`;
      return `revision ${revision} ${trial ? 'can be issued' : `issued: ${folder}`}\n  ${change}${old}`;
    }
    case 'current':
      return `revision ${result.revision} is issued already, and nothing changed since${copies.length === 0 ? '' : `; ${copies.join(', ')} ${copies.length === 1 ? 'is' : 'are'} not noted: an issue is never changed`}`;
    case 'refused':
      return `is not issued:\n${result.reasons.map((reason) => `  ${reason}`).join('\n')}`;
  }
}

function verifyAll({ shell }: Context): number {
  const stores = shelvesHere(shell, []).map((shelf) => readStore(shell, shelf));
  const problems = stores.flatMap((store) => store.problems);
  const count = stores.reduce((sum, store) => sum + store.issues.length, 0);
  shell.out.write(
    problems.length === 0
      ? `${count} ${count === 1 ? 'issue' : 'issues'}: all as they were written.\n`
      : problems.map((one) => `${one}\n`).join(''),
  );
  return problems.length === 0 ? 0 : 1;
}
