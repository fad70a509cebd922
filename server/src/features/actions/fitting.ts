// Writes the fitting half of the job from the taking-off half, at the end of what is written.
import {
  fittingEdits,
  fittingHalf,
  SECTION_BY_WORD,
  type Span,
  type StateGroup,
  stateAt,
  type TextEdit,
} from '@baywright/language';
import { CodeActionKind } from 'vscode-languageserver';
import type { Snapshot } from '../../snapshot.js';
import { fromLanguage } from '../../workspace-edit.js';
import type { ActionOffer } from './offer.js';

export function writeFittingHalf(snapshot: Snapshot, span: Span): ActionOffer | undefined {
  // It is work on the work: beside a part number the list stays about the part.
  const section = snapshot.tree.lines.findLast((l) => l.start <= span.start);
  // The empty line behind the last step is where the rest is wanted.
  if (section && snapshot.text.slice(section.end, span.start).trim() !== '') return undefined;
  if (section?.kind !== 'section' || !SECTION_BY_WORD.get(section.word)?.work) return undefined;
  const { run, model } = snapshot.analysis();
  if (!run) return undefined;
  // Working it out takes longer than all else in a list: whoever asks for it once it is chosen is told by what is open.
  const edits = (): TextEdit[] => fittingEdits(model, fittingHalf(run));
  const isOpen = snapshot.client.resolvesEdits
    ? stateAt(run, Number.MAX_SAFE_INTEGER).some(({ group }) => PUT_BACK.has(group))
    : edits().length > 0;
  if (!isOpen) return undefined;
  return {
    title: snapshot.say.fittingHalf,
    kind: CodeActionKind.RefactorRewrite,
    edit: () => fromLanguage(snapshot, edits()),
  };
}

/** What a line brings back. */
const PUT_BACK: ReadonlySet<StateGroup> = new Set<StateGroup>([
  'off',
  'hung',
  'disconnected',
  'capped',
  'loose',
  'untorqued',
  'drained',
  'raised',
  'placed',
  'changed',
]);
