// Which edition and which print a page belongs to, in words.
import type { GuideDocument } from './document.js';

/** `Revision 4 of 2026-10-05`; empty for a draft that has no revision line yet. */
export function revisionText({ identity, words }: GuideDocument): string {
  if (identity.date === '') return '';
  return words.revision.replace('{revision}', identity.revision).replace('{date}', identity.date);
}

/** What tells one print of a procedure from another: side, options, revision. */
export function factsOf(document: GuideDocument): string[] {
  const { side, options } = document.identity;
  return [side ?? '', ...options, revisionText(document)].filter((fact) => fact !== '');
}
