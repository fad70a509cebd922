// Words that the wording review looks for in English texts. The rules are those of ASD-STE100 that a program can test
// (one instruction a sentence, 20 words, imperative, active); the word lists are our own, common practice.

/** Vague words with what to write instead. */
export const VAGUE_WORDS: readonly { readonly words: string; readonly instead: string }[] = [
  { words: 'nice and tight', instead: 'the torque' },
  { words: 'good and tight', instead: 'the torque' },
  { words: 'tight enough', instead: 'the torque' },
  { words: 'snug it up', instead: '`snug` with the name of the set' },
  { words: 'hand tight plus', instead: 'the torque or the angle' },
  { words: 'a little bit', instead: 'how much' },
  { words: 'a bit of', instead: 'how much' },
  { words: 'a small amount', instead: 'how much' },
  { words: 'a little', instead: 'how much' },
  { words: 'as needed', instead: 'when, by which sign' },
  { words: 'as necessary', instead: 'when, by which sign' },
  { words: 'as required', instead: 'when, by which sign' },
  { words: 'if necessary', instead: '`if needed` with the sign that tells' },
  { words: 'as appropriate', instead: 'when, by which sign' },
  { words: 'approximately', instead: 'a range: `3 to 5 mm`' },
  { words: 'roughly', instead: 'a range: `3 to 5 mm`' },
  { words: 'a few', instead: 'the number' },
  { words: 'several', instead: 'the number' },
  { words: 'some time', instead: 'how long' },
  { words: 'a while', instead: 'how long' },
  { words: 'not too tight', instead: 'the torque' },
  { words: 'not too much', instead: 'how much' },
  { words: 'adequate', instead: 'what is enough' },
  { words: 'adequately', instead: 'what is enough' },
  { words: 'sufficient', instead: 'what is enough' },
  { words: 'sufficiently', instead: 'what is enough' },
  { words: 'etc', instead: 'the whole list' },
  { words: 'and so on', instead: 'the whole list' },
];

/** Words for a side that turns with the market: the driver sits left in one country and right in the next. */
export const MARKET_SIDES: readonly string[] = [
  "driver's side",
  'driver’s side',
  'driver side',
  "passenger's side",
  'passenger’s side',
  'passenger side',
  'near side',
  'nearside',
  'near-side',
  'off side',
  'offside',
  'off-side',
  'kerb side',
  'kerbside',
  'curb side',
  'curbside',
];

/** Two words for one thing: a job keeps to the one it used first. */
export const MIXED_TERMS: readonly (readonly string[])[] = [
  ['make sure', 'ensure', 'be sure'],
  ['undo', 'unscrew', 'slacken'],
];

/** Most words in a sentence that tells what to do, and in one that explains (ASD-STE100 rules 5.1 and 6.3). */
export const MOST_WORDS = { instruction: 20, explanation: 25 } as const;
