// `accept CODE: reason` silences that code on the next line; above the opening line, in the whole file.
import { type Finding, finding } from '../diagnostics/define.js';
import { acceptUnused } from '../diagnostics/r901-accept-unused.js';
import { LIBRARY_WIDE_DIAGNOSTICS } from '../diagnostics/register.js';
import { linesOf, linesOfKind } from '../names/job.js';
import type { FileModel } from '../names/model.js';
import type { AcceptLine, Line } from '../syntax/tree.js';

export function acceptFindings(file: FileModel, findings: readonly Finding[]): Finding[] {
  const accepts = linesOfKind(file, 'accept');
  if (accepts.length === 0) return [...findings];
  const lines = [...linesOf(file)].sort((a, b) => a.start - b.start);
  const used = new Set<string>();
  const left = findings.filter((f) => {
    if (f.file !== file.path) return true;
    const by = accepts.find(
      (a) => a.codes.some((c) => c.text === f.code || c.text === f.name) && covers(a, f, file, lines),
    );
    const code = by?.codes.find((c) => c.text === f.code || c.text === f.name);
    if (!by || !code) return true;
    used.add(`${by.start} ${code.text}`);
    return false;
  });
  for (const accept of accepts) {
    for (const code of accept.codes) {
      if (
        used.has(`${accept.start} ${code.text}`) ||
        LIBRARY_WIDE_DIAGNOSTICS.some((d) => d.code === code.text || d.name === code.text)
      )
        continue;
      left.push(
        finding(
          acceptUnused,
          { file: file.path, span: { start: code.start, end: code.end } },
          { code: code.text },
        ),
      );
    }
  }
  return left;
}

/** The codes accepted in a file with their reasons, for the review report. */
export function acceptedIn(
  file: FileModel,
): { readonly code: string; readonly reason: string; readonly line: AcceptLine }[] {
  return linesOfKind(file, 'accept').flatMap((l) =>
    l.codes.map((c) => ({ code: c.text, reason: l.prose?.text ?? '', line: l })),
  );
}

function covers(accept: AcceptLine, f: Finding, file: FileModel, lines: readonly Line[]): boolean {
  if (file.head && accept.start < file.head.start) return true;
  const next = lines.find((l) => l.start > accept.start && l.kind !== 'accept');
  if (!next) return false;
  const end = next.children[0] ? Math.min(next.end, next.children[0].start) : next.end;
  return f.span.start >= next.start && f.span.start < Math.max(end, next.code.end);
}
