// `baywright explain`: the page of a finding.
import { DIAGNOSTICS, type DiagnosticDef, nearest } from '@baywright/language';
import type { Colors } from 'picocolors/types.js';
import { type Context, defineCommand } from '../command.js';
import { CannotRun } from '../shell.js';

export default defineCommand({
  name: 'explain',
  summary: 'tell why a finding matters and how it is put right',
  docs: `Prints the page of a finding: why it matters in the shop, an example that has it and the same put right.

Without a code it lists all findings.`,
  takes: [{ name: 'code', docs: 'a code such as F203, or the finding’s name', optional: true }],
  options: {},
  examples: [
    ['baywright explain F203', 'by code'],
    ['baywright explain never-put-back', 'by name'],
    ['baywright explain', 'the list'],
  ],
  run({ shell, paint }: Context, [asked]) {
    if (asked === undefined) {
      shell.out.write(
        DIAGNOSTICS.map((def) => `${def.code}  ${def.severity.padEnd(8)}  ${def.name}\n`).join(''),
      );
      return 0;
    }
    const wanted = asked.toLowerCase();
    const def = DIAGNOSTICS.find((one) => one.code.toLowerCase() === wanted || one.name === wanted);
    if (def === undefined) throw new CannotRun(unknown(asked));
    shell.out.write(page(def, paint));
    return 0;
  },
});

function unknown(asked: string): string {
  const names = DIAGNOSTICS.flatMap((def) => [def.code, def.name]);
  const inName = DIAGNOSTICS.filter((def) => asked.length > 2 && def.name.includes(asked.toLowerCase())).map(
    (def) => def.name,
  );
  const near = [...new Set([...inName, ...nearest(asked, names)])].slice(0, 5);
  const advice = near.length === 0 ? '`baywright explain` lists them all' : `near it: ${near.join(', ')}`;
  return `there is no finding “${asked}”; ${advice}`;
}

function page(def: DiagnosticDef<never>, paint: Colors): string {
  const examples = [
    ['Wrong', def.wrong],
    ['Right', def.right],
  ] as const;
  const shown = examples.map(([title, text]) => `${paint.bold(title)}\n\n${indented(text)}\n`);
  return `${paint.bold(`${def.code} ${def.name}`)} (${def.severity})\n\n${def.why.trim()}\n\n${shown.join('\n')}`;
}

const indented = (text: string): string =>
  text
    .replace(/\n+$/, '')
    .split('\n')
    .map((line) => (line === '' ? '' : `    ${line}`))
    .join('\n');
