// Refactors of figures: write a quantity in the other unit system; turn a number in text into a reference.
import { formatMeasure, parseQuantity, pathAt, type Span, touches } from '@baywright/language';
import { CodeActionKind } from 'vscode-languageserver';
import type { Snapshot } from '../../snapshot.js';
import { fromLanguage } from '../../workspace-edit.js';
import { inOtherSystem, measuresOf } from '../quantities.js';
import type { ActionOffer } from './offer.js';

export function convertQuantity(snapshot: Snapshot, span: Span): ActionOffer | undefined {
  const line = pathAt(snapshot.tree, span.start).pop();
  const node = line && measuresOf(line).find((m) => touches(m, span.start));
  const other = node && inOtherSystem(node);
  if (!node?.measure || other === undefined) return undefined;
  // A line of work that repeats a declared figure must say the same, which a rounded one does not.
  if (line?.kind === 'statement' && saying(snapshot, formatMeasure(node.measure)).length > 0)
    return undefined;
  return {
    title: snapshot.say.writeAs(other),
    kind: CodeActionKind.RefactorRewrite,
    edit: () =>
      fromLanguage(snapshot, [
        { file: snapshot.path, span: { start: node.start, end: node.end }, text: other },
      ]),
  };
}

/** A number with a unit in text, where a declared figure has the same value: it is then written in one place only. */
export function numberToReference(snapshot: Snapshot, span: Span): ActionOffer[] {
  const line = pathAt(snapshot.tree, span.start).pop();
  if (!line?.prose || !touches(line.prose, span.start)) return [];
  const { text } = snapshot;
  const from = Math.max(line.prose.start, text.lastIndexOf('\n', span.start - 1) + 1);
  const rest = text.slice(from, Math.min(line.prose.end, from + 500));
  for (const match of rest.matchAll(/\d[\d.,]*\s?[\p{L}°·%/-]+/gu)) {
    const at = { start: from + match.index, end: from + match.index + match[0].length };
    if (!touches(at, span.start)) continue;
    const read = parseQuantity(match[0].replace(/[.,]$/, ''));
    if (!('measure' in read)) continue;
    const wanted = formatMeasure(read.measure);
    const found = saying(snapshot, wanted);
    return [...new Set(found)].slice(0, 4).map((reference) => ({
      title: snapshot.say.referTo(reference),
      kind: CodeActionKind.RefactorRewrite,
      edit: () => fromLanguage(snapshot, [{ file: snapshot.path, span: at, text: reference }]),
    }));
  }
  return [];
}

/** References to declared figures that say this. */
function saying(snapshot: Snapshot, wanted: string): string[] {
  const found: string[] = [];
  for (const thing of snapshot.job().scope.names.values()) {
    for (const [word, list] of thing.clauses) {
      for (const { clause } of list) {
        const measure = clause.spec?.stages[0]?.measure.measure;
        if (measure && clause.spec?.stages.length === 1 && formatMeasure(measure) === wanted)
          found.push(`{${thing.name} ${word}}`);
      }
    }
  }
  return found;
}
