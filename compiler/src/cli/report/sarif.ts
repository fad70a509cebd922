// Findings as SARIF 2.1.0 (OASIS Standard, 27 March 2020), with what code-scanning services ask for beyond it:
// help texts, a rule index and a fingerprint that survives moved lines.
import { type DiagnosticDef, VERSION } from '@baywright/language';
import type { Log, ReportingDescriptor, Result } from 'sarif';
import type { Report, ReportFinding } from './schema.js';

/** `lineOf` gives the source line of a finding's file, for the fingerprint. */
export async function sarifReport(
  report: Report,
  rules: readonly DiagnosticDef<never>[],
  lineOf: (file: string, line: number) => string,
): Promise<string> {
  // Asked for here alone: the module takes longer to load than a small file takes to check.
  const { createHash } = await import('node:crypto');
  const hash = (text: string) => createHash('sha256').update(text).digest('hex').slice(0, 16);
  const used = rules.filter((rule) => report.findings.some((finding) => finding.code === rule.code));
  const indexes = new Map(used.map((rule, i) => [rule.code as string, i]));
  const seen = new Map<string, number>();
  const log: Log = {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'Baywright', semanticVersion: VERSION, rules: used.map(descriptor) } },
        columnKind: 'utf16CodeUnits',
        results: report.findings.map((finding) =>
          result(finding, indexes.get(finding.code), print(finding, lineOf, hash, seen)),
        ),
      },
    ],
  };
  return `${JSON.stringify(log, undefined, 2)}\n`;
}

const LEVELS = { error: 'error', warning: 'warning', question: 'note', hint: 'note' } as const;

function descriptor(rule: DiagnosticDef<never>): ReportingDescriptor {
  const title = `${rule.name.replaceAll('-', ' ')}`;
  return {
    id: rule.code,
    name: rule.name,
    shortDescription: { text: title.charAt(0).toUpperCase() + title.slice(1) },
    fullDescription: { text: clip(rule.why, 1024) },
    help: {
      text: rule.why,
      markdown: `${rule.why}\n\nWrong:\n\n\`\`\`\n${rule.wrong}\n\`\`\`\n\nRight:\n\n\`\`\`\n${rule.right}\n\`\`\``,
    },
    defaultConfiguration: { level: LEVELS[rule.severity] },
    properties: { precision: 'very-high', 'problem.severity': PROBLEM_SEVERITY[rule.severity] },
  };
}

const PROBLEM_SEVERITY = {
  error: 'error',
  warning: 'warning',
  question: 'recommendation',
  hint: 'recommendation',
} as const;

const clip = (text: string, most: number): string =>
  text.length <= most ? text : `${text.slice(0, most - 1)}…`;

function result(finding: ReportFinding, ruleIndex: number | undefined, fingerprint: string): Result {
  return {
    ruleId: finding.code,
    ...(ruleIndex === undefined ? {} : { ruleIndex }),
    level: LEVELS[finding.severity],
    message: { text: finding.message },
    locations: [{ physicalLocation: location(finding) }],
    relatedLocations: finding.related.map((place, id) => ({
      id,
      message: { text: place.message },
      physicalLocation: location(place),
    })),
    partialFingerprints: { primaryLocationLineHash: fingerprint },
    fixes: finding.fixes.map(({ title, edits }) => ({
      description: { text: title },
      artifactChanges: [...new Set(edits.map((edit) => edit.file))].map((file) => ({
        artifactLocation: { uri: uri(file) },
        replacements: edits
          .filter((edit) => edit.file === file)
          .map((edit) => ({ deletedRegion: region(edit.range), insertedContent: { text: edit.text } })),
      })),
    })),
  };
}

const location = (place: { file: string; range: ReportFinding['range'] }) => ({
  artifactLocation: { uri: uri(place.file) },
  region: region(place.range),
});

const region = ({ start, end }: ReportFinding['range']) => ({
  startLine: start.line,
  startColumn: start.column,
  endLine: end.line,
  endColumn: end.column,
});

/** A relative reference: each part of the path percent-encoded (RFC 3986). */
const uri = (file: string): string => file.split('/').map(encodeURIComponent).join('/');

/** Code and line text, and how many like it came before: the same after lines above were added or taken away. */
function print(
  finding: ReportFinding,
  lineOf: (file: string, line: number) => string,
  hash: (text: string) => string,
  seen: Map<string, number>,
): string {
  const text = lineOf(finding.file, finding.range.start.line).trim();
  const key = hash(`${finding.code}\n${finding.file}\n${text}`);
  const before = seen.get(key) ?? 0;
  seen.set(key, before + 1);
  return `${key}:${before + 1}`;
}
