// What shops and other notations say for the word that opens a line. A line that begins with one is reported with the
// word to use and read as that, before any word that only looks like it: `max` is no slip of `mix`. Common practice, no
// source.

export const HEADS_SAID: ReadonlyMap<string, string> = new Map(
  Object.entries({
    otherwise: ['else'],
    'at most': ['max', 'maximum'],
    'at least': ['min', 'minimum'],
    mass: ['weight', 'weighs', 'wt'],
    count: ['qty', 'quantity', 'pcs', 'pieces'],
    number: ['pn', 'part-number', 'part-no'],
    renew: ['replace', 'single-use', 'one-time-use'],
  }).flatMap(([word, said]) => said.map((each): [string, string] => [each, word])),
);
