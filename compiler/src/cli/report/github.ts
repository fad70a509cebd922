// Findings as GitHub workflow commands, which show them beside the changed lines.
// Source: GitHub documentation, "Workflow commands for GitHub Actions" (message syntax and escaping).
import type { Report, ReportFinding } from './schema.js';

export function githubReport(report: Report): string {
  return report.findings.map((finding) => `${command(finding)}\n`).join('');
}

const LEVELS = { error: 'error', warning: 'warning', question: 'notice', hint: 'notice' } as const;

function command({ severity, file, range, code, name, message }: ReportFinding): string {
  const { start, end } = range;
  const properties = {
    file,
    line: start.line,
    endLine: end.line,
    // Columns are only understood within one line.
    ...(start.line === end.line ? { col: start.column, endColumn: end.column } : {}),
    title: `${code} ${name}`,
  };
  const list = Object.entries(properties).map(([key, value]) => `${key}=${property(String(value))}`);
  return `::${LEVELS[severity]} ${list.join(',')}::${data(message)}`;
}

const data = (text: string): string =>
  text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
const property = (text: string): string => data(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
