// The dangers of the first page: the gravest messages of the whole job, and whether there are more.
import { phrase, phraseText, SIGNAL_WORDS, SIGNALS } from '@baywright/language';
import type { BlockOf } from '../blocks.js';
import { plain, text } from '../inline.js';
import { needGroups } from './needs.js';
import type { Print } from './print.js';

/** The gravest messages, each once. */
export function dangerRows(print: Print): BlockOf<'dangers'>['rows'] {
  const rows = needGroups(print).reduce((sum, group) => sum + group.rows.length, 0);
  const isFull = rows > MANY_NEEDS && rows <= MOST_NEEDS;
  return graveMessages(print)
    .slice(0, isFull ? MOST_DANGERS - 1 : MOST_DANGERS)
    .map(({ signal, body, steps }) => ({
      signal,
      word: SIGNAL_WORDS[signal][print.language],
      body,
      where: [text(stepsText(print, steps))],
    }));
}

/** All messages, what can hurt somebody before what can spoil the job, each with the steps it stands at. */
function graveMessages({ uses: { messages } }: Print) {
  const seen = new Map<string, { at: number; steps: string[] }>();
  messages.forEach(({ body, step }, at) => {
    const words = plain(body);
    const known = seen.get(words);
    if (!known) seen.set(words, { at, steps: [step] });
    else if (!known.steps.includes(step)) known.steps.push(step);
  });
  const first = [...seen.values()].flatMap(({ at, steps }) => {
    const message = messages[at];
    return message ? [{ ...message, at, steps }] : [];
  });
  return first.sort((a, b) => SIGNALS.indexOf(a.signal) - SIGNALS.indexOf(b.signal) || a.at - b.at);
}

/** Says so where the list is not whole: a reader of the first page is not to take what is left out for safe. */
export function dangersTitle(print: Print, shown: number): string {
  const others = graveMessages(print)
    .slice(shown)
    .filter(({ signal }) => signal !== 'notice');
  return others.length === 0
    ? phrase('dangers', print.language)
    : phraseText('dangers-first', print.language, {
        shown: `${shown}`,
        count: `${shown + others.length}`,
      });
}

/** `step 2`, `steps 2, 9`. */
const stepsText = ({ language }: Print, steps: readonly string[]): string =>
  steps.length === 1
    ? phraseText('step-number', language, { number: steps.join() })
    : phraseText('step-numbers', language, { numbers: steps.join(', ') });

/** More than three are not read. Common practice. */
const MOST_DANGERS = 3;
/** With more needs than this a third panel would push them to a second page. Measured. */
const MANY_NEEDS = 22;
/** And with more than this they take a second page anyway. */
const MOST_NEEDS = 28;
