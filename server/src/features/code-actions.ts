// Code actions: fixes of findings at the place, refactors that fit it, and what is done to a whole file on request.
// Edits are made when an action is chosen, for clients that can ask for them then.
import {
  type CodeAction,
  CodeActionKind,
  type CodeActionParams,
  LSPErrorCodes,
  ResponseError,
} from 'vscode-languageserver';
import type { Snapshot } from '../snapshot.js';
import type { View } from '../view.js';
import { writeFittingHalf } from './actions/fitting.js';
import { fixAll, quickFixes } from './actions/fixes.js';
import { organiseImports } from './actions/imports.js';
import { moveToCatalogue } from './actions/move-entry.js';
import type { ActionOffer } from './actions/offer.js';
import { convertQuantity, numberToReference } from './actions/quantity.js';
import { splitStep, toOperation } from './actions/steps.js';
import { documentFeature, libraryFeature } from './feature.js';

const KINDS = [
  CodeActionKind.QuickFix,
  CodeActionKind.RefactorRewrite,
  CodeActionKind.RefactorExtract,
  `${CodeActionKind.Refactor}.move`,
  CodeActionKind.SourceFixAll,
  CodeActionKind.SourceOrganizeImports,
];

/** Where an action was offered, handed back by the client when it is chosen. */
interface Offered extends Pick<CodeActionParams, 'range'> {
  readonly uri: string;
  readonly version: number | null;
  readonly only: readonly string[] | undefined;
}

export const codeActions = documentFeature<CodeActionParams>(
  'textDocument/codeAction',
  { codeActionProvider: { codeActionKinds: KINDS, resolveProvider: true } },
  async (snapshot, { range, context: { only } }, view): Promise<CodeAction[]> => {
    await view.analysed(snapshot);
    const { uri, version, client } = snapshot;
    const place: Offered = { uri, version, range, only };
    return offersAt(snapshot, place, view).map(({ edit, ...action }) =>
      client.resolvesEdits ? { ...action, data: place } : { ...action, edit: edit() },
    );
  },
);

export const resolveCodeAction = libraryFeature<CodeAction>(
  'codeAction/resolve',
  {},
  (view, action): CodeAction => {
    const place = action.data as Offered | undefined;
    const snapshot = place && view.snapshot(place.uri);
    if (!place || !snapshot) return action;
    const offer = offersAt(snapshot, place, view).find(
      (o) => o.title === action.title && o.kind === action.kind,
    );
    if (!offer || snapshot.version !== place.version)
      throw new ResponseError(LSPErrorCodes.ContentModified, 'edited since it was offered');
    return { ...action, edit: offer.edit() };
  },
);

function offersAt(
  snapshot: Snapshot,
  { range, only }: Pick<Offered, 'range' | 'only'>,
  view: View,
): ActionOffer[] {
  const span = snapshot.positions.span(range);
  const wants = (kind: string): boolean => !only || only.some((o) => kind === o || kind.startsWith(`${o}.`));
  const sourceAsked = only?.some((o) => o.startsWith('source')) ?? false;
  const offers: (ActionOffer | undefined)[] = [];
  if (wants(CodeActionKind.QuickFix)) offers.push(...atPlace(snapshot, span, view));
  if (wants(CodeActionKind.RefactorRewrite))
    offers.push(
      convertQuantity(snapshot, span),
      ...numberToReference(snapshot, span),
      splitStep(snapshot, span),
      writeFittingHalf(snapshot, span),
    );
  if (wants(CodeActionKind.RefactorExtract)) offers.push(toOperation(snapshot, span));
  if (wants(`${CodeActionKind.Refactor}.move`)) offers.push(...moveToCatalogue(snapshot, span));
  // Actions on a whole file are offered when asked for, so that the lamp at a line stays about the line.
  if (sourceAsked && wants(CodeActionKind.SourceFixAll)) offers.push(fixAll(snapshot));
  if (sourceAsked && wants(CodeActionKind.SourceOrganizeImports)) offers.push(organiseImports(snapshot));
  return offers.filter((a) => a !== undefined);
}

function atPlace(snapshot: Snapshot, span: { start: number; end: number }, view: View): ActionOffer[] {
  const all = [...snapshot.analysis().findings, ...view.wide(snapshot)];
  const here = all.filter(
    (f) => f.file === snapshot.path && f.span.start <= span.end && f.span.end >= span.start,
  );
  return quickFixes(snapshot, here);
}
