// Moves a declaration to a catalogue and imports it, where the file does not already.
import { pathAt, SECTION_BY_WORD, type Span, type TextEdit, wholeLines } from '@baywright/language';
import { CodeActionKind } from 'vscode-languageserver';
import type { Snapshot } from '../../snapshot.js';
import { fromLanguage } from '../../workspace-edit.js';
import { CATALOGUE, filesUsed, useLine } from '../import-lines.js';
import type { ActionOffer } from './offer.js';
import { entryInsertion, reindented } from './text.js';

const MOST = 5;

export function moveToCatalogue(snapshot: Snapshot, span: Span): ActionOffer[] {
  const path = pathAt(snapshot.tree, span.start);
  const entry = path.find((l) => l.kind === 'entry');
  const section = path[0];
  const kind = section?.kind === 'section' ? SECTION_BY_WORD.get(section.word)?.declares : undefined;
  if (!entry || !kind) return [];
  const { text } = snapshot;
  const used = filesUsed(snapshot);
  const catalogues = snapshot.shelf
    .paths()
    .filter((p) => p !== snapshot.path && CATALOGUE.test(snapshot.file(p)?.text ?? ''));
  const ours = catalogues.filter((p) => used.has(p));
  // The catalogue of the vehicle is the place to look first, house rules after it; others only where none is used.
  const isOfVehicle = (p: string): boolean => /^vehicles\s*$/m.test(snapshot.file(p)?.text ?? '');
  const nearest = (ours.length > 0 ? ours : catalogues)
    .sort((a, b) => Number(isOfVehicle(b)) - Number(isOfVehicle(a)))
    .slice(0, MOST);
  const edits = (target: string): TextEdit[] => {
    const lone = section?.children.length === 1;
    const own = lone && section ? withGap(text, wholeLines(text, section)) : wholeLines(text, entry);
    const { start, end } = wholeLines(text, entry);
    const block = reindented(text.slice(start, end), 2 - entry.indent);
    const other = snapshot.library.model(target);
    const into = snapshot.file(target);
    const insertion = other && into && entryInsertion(target, into.text, other.lines, kind, block);
    if (!insertion) return [];
    const use = used.has(target) ? [] : [useLine(snapshot, target)];
    return [{ file: snapshot.path, span: own, text: '' }, insertion, ...use];
  };
  return nearest.map((target) => ({
    title: snapshot.say.moveTo(entry.head.text, target),
    kind: `${CodeActionKind.Refactor}.move`,
    edit: () => fromLanguage(snapshot, edits(target)),
  }));
}

/** A section that goes takes the blank line behind it along. */
function withGap(text: string, { start, end }: Span): Span {
  return { start, end: end + (/^[ \t]*\r?\n/.exec(text.slice(end, end + 200))?.[0].length ?? 0) };
}
