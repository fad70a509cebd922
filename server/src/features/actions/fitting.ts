// Writes the fitting half of the job from the taking-off half, at the end of what is written.
import { fittingEdits, fittingHalf, SECTION_BY_WORD, type Span } from '@baywright/language';
import { CodeActionKind } from 'vscode-languageserver';
import type { Snapshot } from '../../snapshot.js';
import { fromLanguage } from '../../workspace-edit.js';
import type { ActionOffer } from './offer.js';

export function writeFittingHalf(snapshot: Snapshot, span: Span): ActionOffer | undefined {
  // It is work on the work: beside a part number the list stays about the part.
  const section = snapshot.tree.lines.find((l) => l.start <= span.start && l.end >= span.start);
  if (section?.kind !== 'section' || !SECTION_BY_WORD.get(section.word)?.work) return undefined;
  const { run, model } = snapshot.analysis();
  const edits = run ? fittingEdits(model, fittingHalf(run)) : [];
  if (edits.length === 0) return undefined;
  return {
    title: snapshot.say.fittingHalf,
    kind: CodeActionKind.RefactorRewrite,
    edit: () => fromLanguage(snapshot, edits),
  };
}
