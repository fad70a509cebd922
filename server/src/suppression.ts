// Findings that the editor's settings leave out in some files. An entry that silences nothing anywhere in the library
// is told, so that it does not outlive its reason. Errors are never left out: only `accept` in the file does that.
import { type Finding, globMatcher } from '@baywright/language';
import type { Options } from './options.js';
import type { Snapshot } from './snapshot.js';

export function suppressed(
  snapshot: Pick<Snapshot, 'options' | 'path'>,
  findings: readonly Finding[],
): readonly Finding[] {
  const entries = snapshot.options.suppress.filter((entry) => globMatcher([entry.files])(snapshot.path));
  if (entries.length === 0) return findings;
  return findings.filter((f) => f.severity === 'error' || !entries.some((entry) => holds(entry, f)));
}

/** Entries and codes of the settings that no finding of these files needs. */
export function unusedSuppressions(
  options: Options,
  files: ReadonlyMap<string, readonly Finding[]>,
): string[] {
  const unused: string[] = [];
  for (const entry of options.suppress) {
    const matches = globMatcher([entry.files]);
    const found = [...files]
      .filter(([path]) => matches(path))
      .flatMap(([, findings]) => findings)
      .filter((f) => f.severity !== 'error');
    for (const code of entry.codes)
      if (!found.some((f) => holds({ ...entry, codes: [code] }, f))) unused.push(`${entry.files}: ${code}`);
  }
  return unused;
}

function holds(entry: Options['suppress'][number], finding: Finding): boolean {
  return entry.codes.some(
    (code) => code === finding.code || code === finding.name || code === finding.code.slice(0, 1),
  );
}
