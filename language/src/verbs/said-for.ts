// What shops say for a verb of the language. One word for one thing keeps guides clear, so these are not verbs: a line
// that begins with one is reported with the word to use, and read on as that verb. Common practice, no source.

import { nearestWord } from '../vocabulary/near.js';
import type { VerbDef } from '../vocabulary/verb.js';
import { VERB_BY_WORD } from './index.js';

/** The verb for each word a technician may type instead. */
export const SAID_FOR: ReadonlyMap<string, string> = new Map(
  Object.entries({
    remove: [
      'detach',
      'unbolt',
      'unscrew',
      'dismount',
      'take-off',
      'take-out',
      'unfasten',
      'strip',
      'extract',
      'press-off',
      'press-out',
      'pull-off',
      'pull-out',
      'pry-off',
      'pry-out',
      'tap-out',
      'drive-out',
      'drive-off',
      'knock-out',
      'knock-off',
      'slide-off',
      'slide-out',
      'lift-off',
      'lift-out',
      'lift-away',
    ],
    install: [
      'fit',
      'refit',
      'reinstall',
      'mount',
      'attach',
      'insert',
      'assemble',
      'press-on',
      'press-in',
      'tap-in',
      'tap-on',
      'drive-in',
      'drive-on',
      'knock-in',
      'slide-on',
      'slide-in',
      'put-on',
      'put-back',
      'bolt-on',
      'screw-in',
      'thread-in',
    ],
    renew: ['replace', 'exchange', 'swap', 'substitute'],
    loosen: ['slacken', 'undo', 'untighten', 'crack'],
    tighten: ['fasten', 'secure', 'nip', 'nip-up', 'tighten-up', 'tighten-down'],
    snug: ['hand-tighten', 'run-up', 'seat'],
    connect: ['reconnect', 'join', 'couple', 'hook', 'hook-up', 'plug-in'],
    disconnect: ['unhook', 'uncouple', 'unclip'],
    inspect: ['check', 'examine', 'look', 'verify', 'view', 'feel', 'watch'],
    measure: ['gauge', 'gage'],
    clean: ['degrease', 'wipe', 'wash', 'scrape'],
    lubricate: ['grease', 'oil', 'pack'],
    apply: ['spread', 'coat', 'smear'],
    fill: ['refill', 'pour', 'add', 'fill-up'],
    raise: ['jack', 'lift', 'hoist', 'jack-up'],
    turn: ['rotate', 'spin', 'crank'],
    move: ['slide', 'shift', 'push'],
    place: ['put', 'position', 'lay'],
    run: ['start', 'idle'],
    'road-test': ['drive', 'test-drive'],
    recheck: ['retorque', 're-torque', 'retighten'],
    record: ['write', 'log'],
    pry: ['lever', 'prise'],
    'top-up': ['top-off'],
    lower: ['let-down', 'set-down'],
    test: ['try', 'prove'],
    tap: ['hit', 'strike', 'knock', 'hammer'],
    set: ['select', 'switch', 'engage', 'disengage'],
    adjust: ['tune', 'regulate'],
    recover: ['reclaim'],
    relieve: ['depressurise', 'depressurize', 'vent'],
    scrap: ['discard', 'dispose'],
    store: ['keep', 'save'],
    wear: ['don'],
    wait: ['pause', 'allow'],
  }).flatMap(([verb, words]) => words.map((word): [string, string] => [word, verb])),
);

/** The verb that a word is, or that it is said for. */
export const verbMeant = (word: string): VerbDef | undefined =>
  VERB_BY_WORD.get(word) ?? VERB_BY_WORD.get(SAID_FOR.get(word) ?? '');

/** What shops say for a verb, beside itself. */
export const wordsFor = (verb: string): readonly string[] =>
  [...SAID_FOR].filter(([, meant]) => meant === verb).map(([said]) => said);

/** Verbs to offer for a word that is none: what shops mean by it first, then the nearest spellings; at most three. */
export function suggestVerbs(word: string): string[] {
  const meant = SAID_FOR.get(word);
  const near = nearestWord(word, VERB_BY_WORD.keys());
  return (meant === undefined ? near : [meant, ...near.filter((verb) => verb !== meant)]).slice(0, 3);
}
