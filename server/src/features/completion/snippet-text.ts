// The text of snippets, as the protocol writes their stops.
import { CompletionItemKind } from 'vscode-languageserver';
import type { Offer } from './answer.js';

/** A stop with the text it starts with. */
export function stop(n: number, text: string): string {
  return `\${${n}:${text}}`;
}

/** A stop that is one of a few words; the first is what it starts with. */
export function choice(n: number, words: readonly string[]): string {
  return words.length === 1 ? stop(n, words[0] ?? '') : `\${${n}|${words.join(',')}|}`;
}

export function snippet(
  label: string,
  docs: string,
  insert: string,
  alsoSaid: readonly string[] = [],
): Offer {
  return { label, kind: CompletionItemKind.Snippet, insert, snippet: true, docs, alsoSaid };
}
