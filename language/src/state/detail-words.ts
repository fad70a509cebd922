// How a thing is not as it came in, in words: what views, hovers and sheets say beside its name.
import type { Language } from '../vocabulary/kinds.js';

/** What is said of a thing, with its figures. */
export type StateDetail =
  | {
      readonly what:
        | 'nothing'
        | 'level unchecked'
        | 'chocked'
        | 'tagged'
        | 'tied'
        | 'on stands'
        | 'lifted'
        | 'suspension jacked'
        | 'spent'
        | 'snug'
        | 'by hand';
    }
  | { readonly what: 'all'; readonly all: number }
  | { readonly what: 'some'; readonly count: number; readonly all: number }
  | { readonly what: 'stage'; readonly stage: number }
  /** A word of the procedure itself, or of a fluid's level. */
  | { readonly what: 'word'; readonly word: string }
  | { readonly what: 'fresh'; readonly name: string }
  /** Clocks of a sealant: each with its time as written, and in hours where that says it better. */
  | {
      readonly what: 'clocks';
      readonly clocks: readonly { readonly word: ClockWord; readonly time: string }[];
    };

export type ClockWord = 'fit within' | 'torque after' | 'fill after' | 'run after';

/** The detail in words; empty when the group of the state says all. */
export function detailText(detail: StateDetail, language: Language): string {
  const words = WORDS[language];
  switch (detail.what) {
    case 'nothing':
      return '';
    case 'all':
      return detail.all > 1 ? fill(words.all, { all: detail.all }) : '';
    case 'some':
      return fill(words.some, { count: detail.count, all: detail.all });
    case 'stage':
      return fill(words.stage, { stage: detail.stage });
    case 'word':
      return words[`level ${detail.word}`] ?? detail.word;
    case 'fresh':
      return fill(words.fresh, { name: detail.name });
    case 'clocks':
      return detail.clocks.map(({ word, time }) => fill(words[word], { time })).join(', ');
    default:
      return words[detail.what] ?? detail.what;
  }
}

function fill(template: string | undefined, slots: Readonly<Record<string, string | number>>): string {
  return (template ?? '').replaceAll(/\{(\w+)\}/g, (_, name: string) => String(slots[name] ?? ''));
}

const WORDS: Readonly<Record<Language, Readonly<Record<string, string>>>> = {
  en: {
    all: 'all {all}',
    some: '{count} of {all}',
    stage: 'stage {stage} done',
    snug: 'snug',
    'by hand': 'by hand',
    'level unchecked': 'level to be checked',
    'level drained': 'drained',
    'level low': 'low',
    chocked: 'chocked',
    tagged: 'tagged',
    tied: 'tied',
    'on stands': 'on stands',
    lifted: 'on the jack or lift',
    'suspension jacked': 'suspension loaded by a jack',
    spent: 'used once: fit new',
    fresh: 'new {name}',
    'fit within': 'fit within {time}',
    'torque after': 'torque after {time}',
    'fill after': 'fill after {time}',
    'run after': 'run after {time}',
  },
  es: {
    all: '{all} de {all}',
    some: '{count} de {all}',
    stage: 'etapa {stage} hecha',
    snug: 'aproximado',
    'by hand': 'a mano',
    'level unchecked': 'nivel por comprobar',
    'level drained': 'vaciado',
    'level low': 'bajo',
    chocked: 'calzado',
    tagged: 'con etiqueta de aviso',
    tied: 'atado',
    'on stands': 'sobre caballetes',
    lifted: 'en el gato o el elevador',
    'suspension jacked': 'suspensión cargada con un gato',
    spent: 'ya usado: montar nuevo',
    fresh: '{name} nuevo',
    'fit within': 'montar en menos de {time}',
    'torque after': 'par final tras {time}',
    'fill after': 'llenar tras {time}',
    'run after': 'arrancar o circular tras {time}',
  },
  fr: {
    all: 'les {all}',
    some: '{count} sur {all}',
    stage: 'étape {stage} faite',
    snug: 'approché',
    'by hand': 'à la main',
    'level unchecked': 'niveau à contrôler',
    'level drained': 'vidangé',
    'level low': 'bas',
    chocked: 'calé',
    tagged: 'étiqueté',
    tied: 'attaché',
    'on stands': 'sur chandelles',
    lifted: 'sur le cric ou le pont',
    'suspension jacked': 'suspension chargée par un cric',
    spent: 'déjà utilisé : monter du neuf',
    fresh: '{name} neuf',
    'fit within': 'monter dans les {time}',
    'torque after': 'couple final après {time}',
    'fill after': 'remplir après {time}',
    'run after': 'démarrer ou rouler après {time}',
  },
  de: {
    all: 'alle {all}',
    some: '{count} von {all}',
    stage: 'Stufe {stage} erledigt',
    snug: 'beigezogen',
    'by hand': 'von Hand',
    'level unchecked': 'Stand noch zu prüfen',
    'level drained': 'abgelassen',
    'level low': 'niedrig',
    chocked: 'gegen Wegrollen gesichert',
    tagged: 'mit Warnschild',
    tied: 'festgebunden',
    'on stands': 'auf Böcken',
    lifted: 'auf Heber oder Bühne',
    'suspension jacked': 'Aufhängung mit Heber belastet',
    spent: 'schon benutzt: neu einbauen',
    fresh: '{name} neu',
    'fit within': 'innerhalb von {time} fügen',
    'torque after': 'Enddrehmoment nach {time}',
    'fill after': 'befüllen nach {time}',
    'run after': 'starten oder fahren nach {time}',
  },
};
