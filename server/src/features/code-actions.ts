// Code actions: fixes of findings at the place, refactors that fit it, and what is done to a whole file on request.
import { type CodeAction, CodeActionKind, type CodeActionParams } from 'vscode-languageserver';
import type { Snapshot } from '../snapshot.js';
import { writeFittingHalf } from './actions/fitting.js';
import { fixAll, quickFixes } from './actions/fixes.js';
import { organiseImports } from './actions/imports.js';
import { moveToCatalogue } from './actions/move-entry.js';
import { convertQuantity, numberToReference } from './actions/quantity.js';
import { splitStep, toOperation } from './actions/steps.js';
import { documentFeature } from './feature.js';

const KINDS = [
  CodeActionKind.QuickFix,
  CodeActionKind.RefactorRewrite,
  CodeActionKind.RefactorExtract,
  `${CodeActionKind.Refactor}.move`,
  CodeActionKind.SourceFixAll,
  CodeActionKind.SourceOrganizeImports,
];

export const codeActions = documentFeature<CodeActionParams>(
  'textDocument/codeAction',
  { codeActionProvider: { codeActionKinds: KINDS } },
  (snapshot, { range, context }): CodeAction[] => {
    const span = snapshot.positions.span(range);
    const wants = (kind: string): boolean =>
      !context.only || context.only.some((only) => kind === only || kind.startsWith(`${only}.`));
    const sourceAsked = context.only?.some((only) => only.startsWith('source')) ?? false;
    const actions: (CodeAction | undefined)[] = [];
    if (wants(CodeActionKind.QuickFix)) actions.push(...atPlace(snapshot, span));
    if (wants(CodeActionKind.RefactorRewrite))
      actions.push(
        convertQuantity(snapshot, span),
        ...numberToReference(snapshot, span),
        splitStep(snapshot, span),
        writeFittingHalf(snapshot),
      );
    if (wants(CodeActionKind.RefactorExtract)) actions.push(toOperation(snapshot, span));
    if (wants(`${CodeActionKind.Refactor}.move`)) actions.push(...moveToCatalogue(snapshot, span));
    // Actions on a whole file are offered when asked for, so that the lamp at a line stays about the line.
    if (sourceAsked && wants(CodeActionKind.SourceFixAll)) actions.push(fixAll(snapshot));
    if (sourceAsked && wants(CodeActionKind.SourceOrganizeImports)) actions.push(organiseImports(snapshot));
    return actions.filter((a) => a !== undefined);
  },
);

function atPlace(snapshot: Snapshot, span: { start: number; end: number }): CodeAction[] {
  const here = snapshot
    .analysis()
    .findings.filter((f) => f.file === snapshot.path && f.span.start <= span.end && f.span.end >= span.start);
  return quickFixes(snapshot, here);
}
