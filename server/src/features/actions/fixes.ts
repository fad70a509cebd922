// Quick fixes of findings, fixes of a whole code, fix-all of the safe ones, and `accept` with a reason.
import type { Finding, Fix, TextEdit } from '@baywright/language';
import { CodeActionKind } from 'vscode-languageserver';
import type { Snapshot } from '../../snapshot.js';
import { fromLanguage } from '../../workspace-edit.js';
import { diagnosticOf } from '../diagnostics.js';
import { importFor } from './import-for.js';
import type { ActionOffer } from './offer.js';

export function quickFixes(snapshot: Snapshot, findings: readonly Finding[]): ActionOffer[] {
  const all = snapshot.analysis().findings;
  const actions: ActionOffer[] = [];
  for (const finding of findings) {
    const diagnostics = [diagnosticOf(snapshot, finding)];
    actions.push(...importFor(snapshot, finding));
    for (const fix of finding.fixes) {
      actions.push({
        title: fix.title,
        kind: CodeActionKind.QuickFix,
        diagnostics,
        edit: () => fromLanguage(snapshot, fix.edits),
        ...(fix.preferred || finding.fixes.length === 1 ? { isPreferred: true } : {}),
      });
    }
    const same = all.filter((f) => f.code === finding.code && f.fixes.length > 0);
    if (finding.fixes.length > 0 && same.length > 1 && !hasFixOfAll(finding, same)) {
      actions.push({
        title: snapshot.say.mendAll(same.length, finding.name),
        kind: CodeActionKind.QuickFix,
        diagnostics,
        edit: () => fromLanguage(snapshot, together(same)),
      });
    }
    if (finding.severity !== 'error' && finding.span.end > 0 && !NOT_ACCEPTED.has(finding.code))
      actions.push({
        title: snapshot.say.acceptHere(finding.code),
        kind: CodeActionKind.QuickFix,
        diagnostics,
        edit: () => fromLanguage(snapshot, [accept(snapshot, finding)]),
      });
  }
  return actions;
}

/** Whether one of its own fixes mends the others too: all of them then offer the same. */
function hasFixOfAll(finding: Finding, same: readonly Finding[]): boolean {
  const saying = ({ title, edits }: Fix): string => JSON.stringify([title, edits]);
  return finding.fixes.some((fix) => same.every((f) => f.fixes.some((x) => saying(x) === saying(fix))));
}

/** What a line above cannot answer for: how lines are indented, and that an accept silences nothing. */
const NOT_ACCEPTED: ReadonlySet<string> = new Set(['G101', 'G102', 'G103', 'R901']);

/** All fixes that may be applied unasked, as one edit. */
export function fixAll(snapshot: Snapshot): ActionOffer | undefined {
  const safe = snapshot.analysis().findings.filter((f) => f.fixes.some((x) => x.preferred));
  if (safe.length === 0) return undefined;
  return {
    title: snapshot.say.applySafe,
    kind: CodeActionKind.SourceFixAll,
    edit: () => fromLanguage(snapshot, together(safe)),
  };
}

/** Edits of several fixes without two that touch the same place: the first in the text stands. */
function together(findings: readonly Finding[]): TextEdit[] {
  const taken: TextEdit[] = [];
  for (const finding of findings) {
    const fix = finding.fixes.find((f) => f.preferred) ?? finding.fixes[0];
    if (!fix || fix.edits.some((e) => taken.some((t) => t.file === e.file && clash(t, e)))) continue;
    taken.push(...fix.edits);
  }
  return taken;
}

function clash(a: TextEdit, b: TextEdit): boolean {
  return a.span.start <= b.span.end && b.span.start <= a.span.end;
}

function accept(snapshot: Snapshot, finding: Finding): TextEdit {
  const start = snapshot.text.lastIndexOf('\n', finding.span.start - 1) + 1;
  const indent = /^[ \t]*/.exec(snapshot.text.slice(start, finding.span.start))?.[0] ?? '';
  return {
    file: snapshot.path,
    span: { start, end: start },
    text: `${indent}accept ${finding.code}: reason\n`,
  };
}
