// The shop's own severities: which level a finding has in a file, and which findings are left out.
import picomatch from 'picomatch/posix.js';
import type { Finding, Severity } from '../diagnostics/define.js';
import type { Settings, SeverityLevel } from './schema.js';

/**
 * Findings with the severities that the settings give them, without those that are off. A code is more exact than a
 * name's letter and wins over it; among the entries of `severityFor` that hold for a file, the last one wins. Errors
 * are handed on as they are.
 */
export function applySeverities(findings: readonly Finding[], settings: Settings): Finding[] {
  const levels = severitiesByFile(settings);
  return findings.flatMap((finding) => {
    if (finding.severity === 'error') return [finding];
    if (!settings.wording && finding.code.startsWith('W')) return [];
    const level = levels(finding);
    if (level === undefined || level === finding.severity) return [finding];
    return level === 'off' ? [] : [{ ...finding, severity: level satisfies Severity }];
  });
}

function severitiesByFile(settings: Settings): (finding: Finding) => SeverityLevel | undefined {
  const groups = settings.severityFor.map(({ files, severity }) => ({ holds: globMatcher(files), severity }));
  return (finding) => {
    let level = levelOf(settings.severity, finding);
    for (const group of groups) {
      const own = levelOf(group.severity, finding);
      if (own !== undefined && group.holds(finding.file)) level = own;
    }
    return level;
  };
}

function levelOf(severity: Settings['severity'], finding: Finding): SeverityLevel | undefined {
  return severity[finding.code] ?? severity[finding.name] ?? severity[finding.code.slice(0, 1)];
}

/** Whether a library path is matched by one of the globs; a plain folder name stands for all that is in it. */
export function globMatcher(globs: readonly string[]): (path: string) => boolean {
  if (globs.length === 0) return () => false;
  const patterns = globs.flatMap((glob) => {
    const plain = glob.replace(/^\.\//, '').replace(/\/+$/, '');
    return [plain, `${plain}/**`];
  });
  return picomatch(patterns, { dot: true });
}
