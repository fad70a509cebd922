// The findings of layout: indents that miss their level, tabs, and the opening line of the file.
import { type Finding, finding } from '../diagnostics/define.js';
import { tabIndent } from '../diagnostics/g101-tab-indent.js';
import { oneSpaceIndent } from '../diagnostics/g102-one-space-indent.js';
import { unevenIndent } from '../diagnostics/g103-uneven-indent.js';
import { openingMissing } from '../diagnostics/g113-opening-missing.js';
import { secondOpening } from '../diagnostics/g114-second-opening.js';
import { span } from '../text/span.js';
import type { Level } from './levels.js';
import type { PhysicalLine } from './physical.js';
import type { Line } from './tree.js';

/** A line that is read on another column than its own. */
export function levelFinding(file: string, line: PhysicalLine, level: Level): Finding {
  const at = span(line.content, Math.min(line.content + 1, line.end));
  const edits = [{ file, span: span(line.start, line.content), text: ' '.repeat(level.indent) }];
  const fixes = [{ title: 'Move it to its level', edits }];
  const def = level.problem === 'one space' ? oneSpaceIndent : unevenIndent;
  return finding(def, { file, span: at, fixes }, { written: line.indent, meant: level.indent });
}

/** One finding for all tabs of a file, at the first: one habit, one finding. A tab counts as one level. */
export function tabFindings(text: string, file: string, lines: readonly PhysicalLine[]): Finding[] {
  const [first] = lines;
  if (first === undefined) return [];
  const edits = lines.map((line) => ({
    file,
    span: span(line.start, line.content),
    text: text.slice(line.start, line.content).replaceAll('\t', '  '),
  }));
  const fixes = [{ title: 'Write two spaces for each tab', edits, preferred: true as const }];
  return [
    finding(tabIndent, { file, span: span(first.start, first.content), fixes }, { lines: lines.length }),
  ];
}

/** The opening line is the first but for `accept`, and the only one. */
export function openingFindings(file: string, lines: readonly Line[]): Finding[] {
  const first = lines.find(({ kind }) => kind !== 'accept');
  const openings = lines.filter(({ kind }) => kind === 'procedure' || kind === 'catalogue');
  const findings = openings
    .slice(1)
    .filter(({ broken }) => !broken)
    .map(({ head }) => finding(secondOpening, { file, span: head }, { head: head.text }));
  // An empty file is how an editor makes one: it is asked about, not counted as wrong.
  if (lines.length === 0)
    return [{ ...finding(openingMissing, { file, span: span(0, 0) }, {}), severity: 'question' }];
  if (first === undefined || first === openings[0] || first.broken) return findings;
  return [finding(openingMissing, { file, span: first.head }, {}), ...findings];
}
