// Findings as a page to print or to send: by file, gravest first in the head, with what to do and what was accepted.

import { el, type Markup } from '../../html/markup.js';
import { reportFrame } from '../../html/report-frame.js';
import type { Report, ReportFinding } from './schema.js';
import { plural } from './text.js';

export interface PageFacts {
  readonly shop: string;
  /** Day of the check, ISO. */
  readonly day: string;
  readonly program: string;
  /** The line that a finding is about, by path as reported and line from 1. */
  readonly lineOf: (file: string, line: number) => string;
  /** Findings that the files accept, with their reasons. */
  readonly accepted: readonly { readonly file: string; readonly code: string; readonly reason: string }[];
}

export function reportPage(report: Report, facts: PageFacts): string {
  const { summary, findings } = report;
  const files = [...new Set(findings.map(({ file }) => file))];
  const counts = SEVERITIES.map(([severity, key]) => [severity, key, summary[key]] as const).filter(
    ([, , count]) => count > 0,
  );
  const main = el(
    'main',
    { id: 'main' },
    el('h1', {}, 'Review report'),
    el(
      'p',
      { class: 'applies' },
      [facts.shop, facts.day, `Baywright ${facts.program}`].filter((one) => one !== '').join(', '),
    ),
    el(
      'dl',
      {},
      el('div', {}, el('dt', {}, 'Files checked'), el('dd', {}, String(summary.files))),
      counts.map(([severity, key, count]) =>
        el(
          'div',
          { class: severity },
          el('dt', {}, key.charAt(0).toUpperCase() + key.slice(1)),
          el('dd', {}, String(count)),
        ),
      ),
    ),
    findings.length === 0 ? el('p', {}, 'No findings.') : false,
    files.map((file) =>
      fileSection(
        file,
        findings.filter((one) => one.file === file),
        facts,
      ),
    ),
    acceptedSection(facts),
  );
  return reportFrame(`Review report ${facts.shop}`.trim(), main);
}

const SEVERITIES = [
  ['error', 'errors'],
  ['warning', 'warnings'],
  ['question', 'questions'],
  ['hint', 'hints'],
] as const;

function fileSection(file: string, findings: readonly ReportFinding[], facts: PageFacts): Markup {
  return el(
    'section',
    {},
    el('h2', {}, file, el('small', {}, ` ${plural(findings.length, 'finding')}`)),
    el(
      'ol',
      {},
      findings.map((finding) => findingItem(finding, facts)),
    ),
  );
}

function findingItem(finding: ReportFinding, { lineOf }: PageFacts): Markup {
  const { severity, code, message, file, range, related, fixes } = finding;
  const line = lineOf(file, range.start.line);
  const end = range.end.line === range.start.line ? range.end.column : line.length + 1;
  return el(
    'li',
    { class: severity },
    el('p', { class: 'said' }, el('b', {}, `${severity} ${code}`), ` line ${range.start.line}: ${message}`),
    el(
      'pre',
      {},
      line.slice(0, range.start.column - 1),
      el('mark', {}, line.slice(range.start.column - 1, end - 1)),
      line.slice(end - 1),
    ),
    related.map((one) =>
      el('p', { class: 'more' }, `${one.message}: ${one.file}, line ${one.range.start.line}`),
    ),
    fixes.slice(0, 1).map((fix) => el('p', { class: 'more' }, `Fix: ${fix.title}`)),
  );
}

function acceptedSection({ accepted }: PageFacts): Markup | false {
  if (accepted.length === 0) return false;
  return el(
    'section',
    {},
    el('h2', {}, 'Accepted', el('small', {}, ` ${plural(accepted.length, 'code')}`)),
    el(
      'ol',
      {},
      accepted.map(({ file, code, reason }) =>
        el('li', {}, el('p', { class: 'said' }, el('b', {}, code), ` ${file}: ${reason}`)),
      ),
    ),
  );
}
