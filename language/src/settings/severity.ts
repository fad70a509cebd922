// The shop's own severities: which level a finding has in a file, and which findings are left out.
import picomatch from 'picomatch/posix.js';
import type { Finding, Severity } from '../diagnostics/define.js';
import type { Settings, SeverityLevel } from './schema.js';

/**
 * A finding with the severity that the settings give it, undefined where it is off. A code is more exact than a
 * letter and wins over it; among the entries of `severityFor` that hold for a file, the last one wins. An error is
 * handed on as it is.
 */
export function severityOf(finding: Finding, settings: Settings): Finding | undefined {
  if (finding.severity === 'error') return finding;
  if (!settings.wording && finding.code.startsWith('W')) return undefined;
  let level = levelOf(settings.severity, finding);
  for (const { holds, severity } of groupsOf(settings)) {
    const own = levelOf(severity, finding);
    if (own !== undefined && holds(finding.file)) level = own;
  }
  if (level === undefined || level === finding.severity) return finding;
  return level === 'off' ? undefined : { ...finding, severity: level satisfies Severity };
}

interface Group {
  readonly holds: (path: string) => boolean;
  readonly severity: Settings['severity'];
}

/** Globs are compiled once for each settings object. */
const compiled = new WeakMap<Settings, readonly Group[]>();

function groupsOf(settings: Settings): readonly Group[] {
  let groups = compiled.get(settings);
  if (groups === undefined) {
    groups = settings.severityFor.map(({ files, severity }) => ({ holds: globMatcher(files), severity }));
    compiled.set(settings, groups);
  }
  return groups;
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
