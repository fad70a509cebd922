// A thing's title within a sentence.
import type { Thing } from './model.js';

/** `Hinge covers, upper and lower` is `the hinge covers`: what follows a comma tells it from others, and is left out. */
export function inSentence({ title, name }: Thing): string {
  const [first = name] = title.split(',');
  const text = /^\p{Lu}\p{Ll}/u.test(first) ? first.charAt(0).toLowerCase() + first.slice(1) : first;
  return /^(?:the|a|an|both|all|each)\s|^\d/i.test(text) ? text : `the ${text}`;
}
