// `check --state-at`: the vehicle just before the work of a line.
import {
  indexLines,
  pathAt,
  positionAt,
  STATE_GROUPS,
  type StateFact,
  type StateGroup,
  stateAt,
} from '@baywright/language';
import type { Context } from './command.js';
import { type OneProcedure, oneProcedure } from './one-procedure.js';
import { CannotRun } from './shell.js';

/** Prints what is off, hung, loose, drained, raised, open, owed or running before a line. Returns the exit code. */
export function printStateAt({ shell, paint }: Context, place: string, format: string): number {
  if (format !== 'text' && format !== 'json')
    throw new CannotRun(`--state-at is written as text or json, not as ${format}`);
  const match = /^(.+):(\d+)$/.exec(place);
  const [, file = '', written = ''] = match ?? [];
  if (!match) throw new CannotRun(`${place} has no line; write it as FH-12.bay:40`);
  const found = oneProcedure(shell, file);
  const { starts } = indexLines(found.analysis.text);
  const line = Number(written);
  const start = starts[line - 1];
  if (start === undefined) throw new CannotRun(`${file} has ${starts.length} lines, no line ${line}`);
  const facts = stateAt(found.run, offsetOf(found, start));
  const groups = (Object.keys(STATE_GROUPS) as StateGroup[]).flatMap((group) => {
    const own = facts.filter((fact) => fact.group === group).map((fact) => told(found, fact));
    return own.length > 0 ? [{ group, title: STATE_GROUPS[group], things: own }] : [];
  });
  if (format === 'json') shell.out.write(`${JSON.stringify({ file, line, groups }, undefined, 2)}\n`);
  else if (groups.length === 0) shell.out.write('All is as it came in.\n');
  else {
    const blocks = groups.map(({ title, things }) =>
      [paint.bold(title), ...things.map((thing) => `  ${inWords(found, thing)}`)].join('\n'),
    );
    shell.out.write(`${blocks.join('\n')}\n`);
  }
  return 0;
}

/** Where the line begins whose work is asked about: its first word, when it has any. */
function offsetOf({ analysis }: OneProcedure, start: number): number {
  const text = analysis.text.slice(start).split('\n', 1)[0] ?? '';
  const line = pathAt(analysis.tree, start + (text.length - text.trimStart().length)).at(-1);
  return line && line.start >= start ? line.start : start;
}

interface Told {
  readonly name: string;
  readonly title: string;
  readonly detail?: string;
  readonly when?: string;
  readonly since?: { readonly file: string; readonly line: number; readonly step?: string };
}

function told({ shelf }: OneProcedure, { thing, detail, variants, act }: StateFact): Told {
  const { name, title } = thing;
  const step = act?.step?.prose?.text.trim();
  const text = act && shelf.library.tree(act.blame.file)?.text;
  const line = act && text !== undefined ? positionAt(indexLines(text), act.blame.span.start).line + 1 : 0;
  return {
    name,
    title,
    ...(detail === '' ? {} : { detail }),
    ...(variants === undefined ? {} : { when: variants }),
    ...(act ? { since: { file: act.blame.file, line, ...(step ? { step } : {}) } } : {}),
  };
}

function inWords({ path }: OneProcedure, { name, title, detail, when, since }: Told): string {
  const parts = [
    `${title} (${name})`,
    detail,
    when === undefined ? undefined : `when ${when}`,
    since && `since ${since.file === path ? 'line' : `${since.file}, line`} ${since.line}`,
  ];
  return parts.filter((part) => part !== undefined).join(', ');
}
