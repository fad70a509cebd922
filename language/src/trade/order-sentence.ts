/** A tightening order as a sentence in English, Spanish, French or German. */
import type { TighteningOrder } from './order.js';

/** Output languages of the sentences the program makes. */
export type SentenceLanguage = 'en' | 'es' | 'fr' | 'de';

type PatternWord = TighteningOrder['pattern'];

interface Phrases {
  readonly tighten: string;
  readonly loosen: string;
  readonly pattern: Readonly<Record<PatternWord, string>>;
  readonly counted: Readonly<Record<TighteningOrder['shape'], string>>;
  readonly passes: (count: number, list: string) => string;
  readonly turns: string;
}

/** One row per language; a new language is one row. */
const PHRASES: Readonly<Record<SentenceLanguage, Phrases>> = {
  en: {
    tighten: 'Tighten',
    loosen: 'Loosen',
    pattern: {
      star: 'in a star',
      cross: 'crosswise',
      'inside-out': 'from the middle outward',
      'outside-in': 'from the outside inward',
      custom: 'in this order',
    },
    counted: {
      circle: 'counted clockwise from the top',
      grid: 'counted row by row from the top left',
      points: 'numbered as in the drawing',
    },
    passes: (count, list) => `Make ${count} passes: ${list}.`,
    turns: 'The numbers in the drawing are the turns.',
  },
  es: {
    tighten: 'Apretar',
    loosen: 'Aflojar',
    pattern: {
      star: 'en estrella',
      cross: 'en cruz',
      'inside-out': 'del centro hacia fuera',
      'outside-in': 'de fuera hacia el centro',
      custom: 'en este orden',
    },
    counted: {
      circle: 'contando en sentido horario desde arriba',
      grid: 'contando por filas desde arriba a la izquierda',
      points: 'con los números del dibujo',
    },
    passes: (count, list) => `Dar ${count} pasadas: ${list}.`,
    turns: 'Los números del dibujo indican el turno de cada uno.',
  },
  fr: {
    tighten: 'Serrer',
    loosen: 'Desserrer',
    pattern: {
      star: 'en étoile',
      cross: 'en croix',
      'inside-out': 'du centre vers l’extérieur',
      'outside-in': 'de l’extérieur vers le centre',
      custom: 'dans cet ordre',
    },
    counted: {
      circle: 'en comptant dans le sens horaire depuis le haut',
      grid: 'en comptant par rangées depuis le haut à gauche',
      points: 'selon les numéros du dessin',
    },
    passes: (count, list) => `Faire ${count} passes : ${list}.`,
    turns: 'Les numéros du dessin donnent le tour de chacun.',
  },
  de: {
    tighten: 'Anziehen',
    loosen: 'Lösen',
    pattern: {
      star: 'sternförmig',
      cross: 'über Kreuz',
      'inside-out': 'von innen nach außen',
      'outside-in': 'von außen nach innen',
      custom: 'in dieser Reihenfolge',
    },
    counted: {
      circle: 'im Uhrzeigersinn von oben gezählt',
      grid: 'reihenweise von oben links gezählt',
      points: 'nummeriert wie in der Zeichnung',
    },
    passes: (count, list) => `In ${count} Durchgängen: ${list}.`,
    turns: 'Die Zahlen der Zeichnung geben die Reihenfolge an.',
  },
};

/** What the sentence says beside the order itself. */
export interface SentenceOptions {
  readonly loosen?: boolean;
  /** Percentages of the passes; one pass says nothing. */
  readonly percentages?: readonly number[];
}

/**
 * `Tighten in a star, counted clockwise from the top: 1-3-5-2-4.` Pairs and groups of a cross are set off by commas.
 * The numbers are positions, not turns.
 */
export function orderSentence(
  order: TighteningOrder,
  language: SentenceLanguage = 'en',
  options: SentenceOptions = {},
): string {
  const p = PHRASES[language];
  // German puts the verb last in an instruction: `Im Stern anziehen`.
  const verb = options.loosen ? p.loosen : p.tighten;
  const head =
    language === 'de'
      ? `${capital(p.pattern[order.pattern])} ${verb.toLowerCase()}`
      : `${verb} ${p.pattern[order.pattern]}`;
  const colon = language === 'fr' ? ' :' : ':';
  const first = `${head}, ${p.counted[order.shape]}${colon} ${orderNumbers(order)}.`;
  const percentages = options.percentages ?? [];
  if (percentages.length < 2) return first;
  const percent = language === 'en' ? '%' : ' %';
  return `${first} ${p.passes(percentages.length, percentages.map((n) => `${n}${percent}`).join(', '))}`;
}

/** What goes below a drawing whose numbers are turns, since the sentence names positions. */
export const orderCaption = (language: SentenceLanguage): string => PHRASES[language].turns;

/** The positions in turn: `1-3-5-2-4`, or `1-7, 4-10, 2-8` where they go in pairs or groups. */
export function orderNumbers(order: TighteningOrder): string {
  return order.groups ? order.groups.map((g) => g.join('-')).join(', ') : order.order.join('-');
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
