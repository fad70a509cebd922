// Words that tell what a message warns of: grave injury, injury, damage. One row for each language; matching is on whole
// words, beginnings of words where a row ends in `*`. The levels are those of ANSI Z535.4 and Z535.6 and of ISO
// 3864-2; the word lists are common practice.
import type { Language } from './kinds.js';

export interface HarmWords {
  /** Death and the injuries that a caution is too weak for. */
  readonly grave: readonly string[];
  readonly injury: readonly string[];
  /** Damage to things. */
  readonly damage: readonly string[];
}

export const HARM_WORDS: Readonly<Record<Language, HarmWords>> = {
  en: {
    grave: [
      'death',
      'die',
      'dies',
      'kill*',
      'fatal*',
      'electrocut*',
      'crush* you',
      'crush* someone',
      'crush* a person',
      'lethal*',
      'asphyxiat*',
      'suffocat*',
      'explod*',
      'explosion',
    ],
    injury: [
      'injur*',
      'hurt*',
      'burn you',
      'burns you',
      'burn your*',
      'burn skin',
      'scald*',
      'wound*',
      'blind*',
      'poison*',
      'crush*',
      'amputat*',
      'electric shock',
      'eyes',
      'skin',
      'finger*',
      'hand injury',
      'lungs',
      'breathe',
      'breathing',
      'inhal*',
      'under pressure',
    ],
    damage: [
      'damage*',
      'crack*',
      'scratch*',
      'scor*',
      'paint',
      'leaks',
      'leaking',
      'leakage',
      'bend*',
      'bent',
      'strip* the thread*',
      'strips',
      'corro*',
      'nick*',
      'tear*',
      'torn',
      'warp*',
      'distort*',
      'dent*',
    ],
  },
  es: {
    grave: ['muerte', 'morir', 'mata', 'matar', 'mortal*', 'electrocut*', 'letal*', 'asfixi*', 'explo*'],
    injury: [
      'lesi*',
      'herid*',
      'quemadur*',
      'escald*',
      'ceguera',
      'venenos*',
      'aplast*',
      'amput*',
      'descarga eléctrica',
      'ojos',
      'piel',
      'dedos',
      'pulmones',
      'inhal*',
      'bajo presión',
    ],
    damage: ['daña*', 'daño*', 'agriet*', 'ray*', 'pintura', 'fuga*', 'dobl*', 'corro*', 'rasg*', 'deform*'],
  },
  fr: {
    grave: ['mort', 'mourir', 'tuer', 'tue', 'mortel*', 'électrocut*', 'létal*', 'asphyxi*', 'explos*'],
    injury: [
      'bless*',
      'brûlure*',
      'ébouillant*',
      'aveugl*',
      'poison',
      'toxique',
      'écras*',
      'amput*',
      'choc électrique',
      'yeux',
      'peau',
      'doigts',
      'poumons',
      'inhal*',
      'sous pression',
    ],
    damage: [
      'endommag*',
      'dégât*',
      'fissur*',
      'ray*',
      'peinture',
      'fuite*',
      'plier',
      'corro*',
      'déchir*',
      'déform*',
    ],
  },
  de: {
    grave: [
      'tod',
      'tödlich*',
      'sterben',
      'stirbt',
      'töten',
      'tötet',
      'lebensgefähr*',
      'stromschlag',
      'erstick*',
      'explo*',
    ],
    injury: [
      'verletz*',
      'verbrenn*',
      'verbrüh*',
      'erblind*',
      'gift*',
      'quetsch*',
      'amput*',
      'augen',
      'haut',
      'finger',
      'lunge*',
      'einatm*',
      'unter druck',
    ],
    damage: [
      'beschädig*',
      'schaden',
      'schäden',
      'riss*',
      'kratz*',
      'lack',
      'undicht*',
      'verbieg*',
      'korro*',
      'einreiß*',
      'verzieh*',
    ],
  },
};

/** Whether a text holds one of the words. */
export function hasWord(text: string, words: readonly string[]): boolean {
  // Nearly all words are not there: a plain search of their first letters tells so much sooner than the pattern.
  const lower = text.toLowerCase();
  return words.some((word) => {
    const { stem, pattern } = matcher(word);
    return lower.includes(stem) && pattern.test(text);
  });
}

interface Matcher {
  /** The letters any match begins with, in lower case. */
  readonly stem: string;
  readonly pattern: RegExp;
}

const matchers = new Map<string, Matcher>();

function matcher(word: string): Matcher {
  let known = matchers.get(word);
  if (!known) {
    const body = word
      .split(' ')
      .map((w) => w.replace(/[.?+^$[\](){}|\\]/g, '\\$&').replaceAll('*', '\\p{L}*'))
      .join('\\s+');
    known = {
      stem: (/^[^ *]*/.exec(word)?.[0] ?? '').toLowerCase(),
      pattern: new RegExp(`(?<![\\p{L}\\p{N}])${body}(?![\\p{L}\\p{N}])`, 'iu'),
    };
    matchers.set(word, known);
  }
  return known;
}
