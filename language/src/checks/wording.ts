// W101 to W104, W107 to W109: the wording of English texts, a review pass of hints.
import { type DiagnosticDef, type Finding, finding } from '../diagnostics/define.js';
import { vagueWords } from '../diagnostics/w101-vague-words.js';
import { longSentence } from '../diagnostics/w102-long-sentence.js';
import { twoInstructions } from '../diagnostics/w103-two-instructions.js';
import { notAnOrder } from '../diagnostics/w104-not-an-order.js';
import { marketSide } from '../diagnostics/w107-market-side.js';
import { mixedTerms } from '../diagnostics/w108-mixed-terms.js';
import { namedInProseOnly } from '../diagnostics/w109-named-in-prose-only.js';
import { allThings, type Job } from '../names/job.js';
import type { Thing } from '../names/model.js';
import { once, onceForText } from '../text/once.js';
import { MARKET_SIDES, MIXED_TERMS, MOST_WORDS, VAGUE_WORDS } from '../vocabulary/wording.js';
import type { Check } from './check.js';
import { countWords, sentencesOf, type WorkText, workTexts } from './texts.js';

export const wording: Check = ({ job, library }) => {
  if (!library.settings.wording || (library.settings.languages[0] ?? 'en') !== 'en') return [];
  const all = workTexts(job);
  const texts = all.filter(({ text }) => !isPlain(text));
  return [
    ...texts.flatMap((text) => [...vague(job, text), ...sides(job, text)]),
    ...texts.filter((t) => t.use !== 'label').flatMap((text) => sentences(job, text)),
    ...mixed(job, texts),
    ...proseOnly(job, all),
  ];
};

/** A finding at each place of a text where a pattern matches; `make` gives its data. */
function each<Data>(
  job: Job,
  text: Searched,
  pattern: Pattern,
  def: DiagnosticDef<Data>,
  make: (words: string) => Data,
): Finding[] {
  return pattern.found(text.text).map((m) =>
    finding(
      def,
      {
        file: job.file.path,
        span: { start: text.start + m.index, end: text.start + m.index + m[0].length },
      },
      make(m[0].replace(/\s+/g, ' ')),
    ),
  );
}

const VAGUE = remembered(phrases(VAGUE_WORDS.map((v) => v.words)));
const SIDES = remembered(phrases(MARKET_SIDES));
const MIXED = MIXED_TERMS.map((terms) => remembered(phrases(terms)));
const JOINED = remembered(
  pattern(
    ['then', 'afterward', 'after which'],
    () => /\b(?:and|but) then\b|\band afterwards?\b|, after which\b/gi,
  ),
);
const PASSIVE = remembered(
  pattern(
    [' be ', 'you '],
    () =>
      /\b(?:should|must|shall|may|might|can|could|(?:is|are|has|have|needs?) to) be \w+(?:ed|en|wn|ut|ght|ept|eld)\b|\byou (?:should|would|could|might|may want to)\b/gi,
  ),
);

/** A short text with none of the words that are looked for: most are, and stay so while others are written. */
const isPlain = onceForText((text): boolean => {
  const lower = text.toLowerCase();
  return (
    [VAGUE, SIDES, JOINED, PASSIVE, ...MIXED].every(
      ({ stems }) => !stems.some((stem) => lower.includes(stem)),
    ) && countWords(text) <= Math.min(MOST_WORDS.instruction, MOST_WORDS.explanation)
  );
});

function vague(job: Job, text: WorkText): Finding[] {
  return each(job, text, VAGUE, vagueWords, (words) => {
    const row = VAGUE_WORDS.find((v) => v.words === words.toLowerCase());
    return { words, instead: row?.instead ?? 'the figure' };
  });
}

function sides(job: Job, text: WorkText): Finding[] {
  return each(job, text, SIDES, marketSide, (words) => ({ words }));
}

/** Messages may warn of what can be done; only instructions are judged for being orders. */
function sentences(job: Job, text: WorkText): Finding[] {
  const most = text.use === 'instruction' ? MOST_WORDS.instruction : MOST_WORDS.explanation;
  const orders = text.use === 'instruction' && text.work.line.kind !== 'message';
  return sentencesOf(text).flatMap((sentence) => {
    const count = countWords(sentence.text);
    const span = { start: sentence.start, end: sentence.end };
    if (count > most) return [finding(longSentence, { file: job.file.path, span }, { count, most })];
    if (!orders) return [];
    return [
      ...each(job, sentence, JOINED, twoInstructions, (words) => ({ words })),
      ...each(job, sentence, PASSIVE, notAnOrder, (words) => ({ words })),
    ];
  });
}

/** The second word of a group in a job, once for each group. */
function mixed(job: Job, texts: readonly WorkText[]): Finding[] {
  return MIXED.flatMap((pattern) => {
    let first: string | undefined;
    for (const text of texts) {
      for (const m of pattern.found(text.text)) {
        const words = m[0].toLowerCase().replace(/\s+/g, ' ');
        first ??= words;
        if (words === first) continue;
        const span = { start: text.start + m.index, end: text.start + m.index + m[0].length };
        return [finding(mixedTerms, { file: job.file.path, span }, { words: m[0], first })];
      }
    }
    return [];
  });
}

/** Tools and supplies whose title stands in a text and whose name stands on no line of work. */
function proseOnly(job: Job, texts: readonly WorkText[]): Finding[] {
  // One short word, such as “lift”, means too much else.
  const things = allThings(job.scopes).filter(
    (thing) => (thing.kind === 'tool' || thing.kind === 'supply') && /\S\s+\S/.test(titleOf(thing)),
  );
  if (things.length === 0) return [];
  const used = new Set(job.file.lines.flatMap((l) => (l.kind === 'section' ? [...wordsBelow(job, l)] : [])));
  return things.flatMap((thing) => {
    if (used.has(thing.name)) return [];
    const pattern = titlePattern(thing);
    for (const text of texts) {
      const [found] = each(job, text, pattern, namedInProseOnly, () => ({
        name: thing.name,
        kind: thing.kind,
      }));
      if (found) return [found];
    }
    return [];
  });
}

const titleOf = (thing: Thing): string => (thing.title.split(/[,(]/)[0] ?? '').trim();
const titlePattern = once((thing: Thing) => phrases([titleOf(thing)]));

/** Names on the lines of work and prerequisites. */
function wordsBelow(job: Job, section: Job['file']['lines'][number]): string[] {
  if (section.kind !== 'section' || !(job.file.work.includes(section) || section.word === 'prerequisites'))
    return [];
  const words: string[] = [];
  const stack = [...section.children];
  for (let line = stack.pop(); line; line = stack.pop()) {
    words.push(...line.tokens.map((t) => t.image));
    stack.push(...line.children);
  }
  return words;
}

type Searched = Pick<WorkText, 'text' | 'start'>;

/** What is looked for, with what a text must hold, in lower case, for it to be found. */
interface Pattern {
  readonly stems: readonly string[];
  readonly found: (text: string) => readonly RegExpExecArray[];
}

/** The same pattern, for texts that are looked at again after every edit. */
function remembered({ stems, found }: Pattern): Pattern {
  return { stems, found: onceForText(found) };
}

/**
 * Finds every place of an expression. Most texts have none, which a plain search of the stems tells much sooner; an
 * expression is made when a text has a stem.
 */
function pattern(stems: readonly string[], make: () => RegExp): Pattern {
  let expression: RegExp | undefined;
  const found = (text: string): readonly RegExpExecArray[] => {
    const lower = text.toLowerCase();
    if (!stems.some((stem) => lower.includes(stem))) return [];
    expression ??= make();
    return [...text.matchAll(expression)];
  };
  return { stems, found };
}

/** Whole words, any spaces between them, longest first. */
function phrases(words: readonly string[]): Pattern {
  return pattern(
    words.map((w) => (/^\S*/.exec(w)?.[0] ?? '').toLowerCase()),
    () => {
      const bodies = [...words]
        .sort((a, b) => b.length - a.length)
        .map((w) => w.replace(/[.?+^$[\](){}|*\\]/g, '\\$&').replace(/\s+/g, '\\s+'));
      return new RegExp(`(?<![\\p{L}\\p{N}-])(?:${bodies.join('|')})(?![\\p{L}\\p{N}-])`, 'giu');
    },
  );
}
