// A thing's title within a sentence.
import type { Thing } from './model.js';

/** `Hinge covers, upper and lower` is `the hinge covers`: what follows a comma tells it from others, and is left out. */
export function inSentence({ title, name }: Thing): string {
  const [first = name] = title.split(',');
  const text = /^\p{Lu}\p{Ll}/u.test(first) ? first.charAt(0).toLowerCase() + first.slice(1) : first;
  // A number ahead is a count, except before a unit: `the 12 V lead`.
  return /^(?:(?:the|a|an|both|all|each)\s|\d+\b(?! ?(?:V|A|W|mm|in)\b))/i.test(text) ? text : `the ${text}`;
}
