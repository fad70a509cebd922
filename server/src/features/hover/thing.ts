// A thing as a card: what it is, its declaration, where its figures come from, what its torque does to the joint, what
// its mix comes to.
import { clausesOf, formatMeasure, type Thing } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import { HEAD_SIZES, otherForm } from '../quantities.js';
import { jointFigures, preloadLine } from './joint.js';
import { mixLines } from './mix.js';

export function thingCard(snapshot: Snapshot, thing: Thing): string {
  const file = thing.line && snapshot.file(thing.file);
  const head = `**${thing.title}** · ${thing.kind}${thing.file && thing.file !== snapshot.path ? ` · ${thing.file}` : ''}`;
  const declared =
    thing.line && file
      ? `\`\`\`baywright\n${dedented(file.text.slice(thing.line.start, thing.line.end), thing.line.indent)}\n\`\`\``
      : undefined;
  return [
    head,
    declared,
    figures(thing),
    joint(snapshot, thing),
    mixLines(snapshot, thing),
    sources(snapshot, thing),
  ]
    .filter((part) => part !== undefined && part !== '')
    .join('\n\n');
}

/** The figures of the thing in the other unit system. */
function figures(thing: Thing): string {
  const lines: string[] = [];
  for (const [word, list] of thing.clauses) {
    for (const { clause } of list) {
      if (HEAD_SIZES.has(word)) continue;
      for (const { measure } of clause.spec?.stages ?? []) {
        const other = otherForm(measure);
        if (!measure.measure || other === undefined) continue;
        const written = formatMeasure(measure.measure);
        lines.push(`${written.startsWith(word) ? '' : `${word} `}${written} ${other}`);
      }
    }
  }
  return lines.join('  \n');
}

function joint(snapshot: Snapshot, thing: Thing): string {
  if (thing.kind !== 'fastener') return '';
  return jointFigures(thing, snapshot.job().scope)
    .map((figures) => {
      const { tool } = figures.wrench;
      return [preloadLine(figures, snapshot.say) ?? '', tool ? snapshot.say.wrench(tool.name) : '']
        .filter((x) => x !== '')
        .join('  \n');
    })
    .filter((x) => x !== '')
    .join('\n\n');
}

/** The sheets its figures come from, by their titles. */
function sources(snapshot: Snapshot, thing: Thing): string {
  const scope = snapshot.job().scope;
  const sheets = new Set(
    clausesOf(thing, 'per').flatMap(({ clause }) =>
      clause.raw && !clause.raw.hole ? [clause.raw.text] : [],
    ),
  );
  return [...sheets]
    .map((sheet) => `per **${sheet}**${scope.resolve(sheet) ? `: ${scope.resolve(sheet)?.title}` : ''}`)
    .join('  \n');
}

/** A block without the indent of its first line. */
function dedented(text: string, indent: number): string {
  return text
    .split(/\r?\n/)
    .map((line, i) => (i === 0 ? line : line.replace(new RegExp(`^[ \\t]{0,${indent}}`), '')))
    .join('\n')
    .trimEnd();
}
