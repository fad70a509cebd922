// Hazards for which the trade has a usual caution: what in a procedure calls for it, which words already answer it, and
// the usual text. All of it is common practice without a published source unless a row names one. Local codes, the
// vehicle maker's data and licensed practice come first, and every text leaves them that place.
import type { FluidFamily } from '../trade/grade-reading.js';
import { HAZARD_TEXTS } from './hazard-texts.js';
import type { Words } from './kinds.js';
import type { Signal } from './signals.js';

/** What calls for a caution. All fields given must hold at one statement. */
export interface HazardTrigger {
  /** Verbs by word; any verb when absent. */
  readonly verbs?: readonly string[];
  /** A mark on the thing acted on, or on the circuit or fluid it opens. */
  readonly marks?: readonly string[];
  /** Names of things: the whole name or its last or first word. */
  readonly names?: readonly string[];
  /** What is in the fluid, or in the circuit or connection that is opened. */
  readonly families?: readonly FluidFamily[];
  /** Built-in machines: `vehicle`, `engine`. */
  readonly machines?: readonly string[];
  /** Marks of a supply that is used in any clause or as object. */
  readonly supplies?: readonly string[];
  /** Only in a step where the engine runs before. */
  readonly engineRuns?: true;
  /** The opening at which this fluid is filled, taken off. */
  readonly fillerOf?: readonly FluidFamily[];
}

export interface Hazard {
  readonly id: string;
  /** The hazard in a few words, for messages: "lifting a vehicle". */
  readonly title: string;
  readonly triggers: readonly HazardTrigger[];
  /** A message that holds one of these words before the action answers it; any language. */
  readonly answered: readonly string[];
  /** The signal word of the usual text. */
  readonly signal: Signal;
  /** Reported as a warning, not as a hint. */
  readonly grave: boolean;
  readonly text: Words;
}

/** Verbs that let out what is inside. */
const OPENING = ['disconnect', 'separate', 'bleed', 'drain', 'flush', 'purge', 'relieve'];

export const HAZARDS: readonly Hazard[] = [
  {
    id: 'lifting',
    title: 'lifting a vehicle',
    triggers: [{ verbs: ['raise'], machines: ['vehicle'] }],
    answered: [
      'stand*',
      'support*',
      'lift*',
      'jack*',
      'under it',
      'under the*',
      'caballete*',
      'soporte*',
      'elevador',
      'chandelle*',
      'pont',
      'bock*',
      'böcke*',
      'hebebühne',
    ],
    signal: 'warning',
    grave: true,
    text: HAZARD_TEXTS.lifting,
  },
  {
    id: 'springs',
    title: 'a loaded spring',
    triggers: [
      { verbs: ['compress'], names: ['spring', 'coil-spring', 'strut'] },
      {
        verbs: ['compress', 'remove', 'release', 'disconnect', 'separate'],
        marks: ['spring', 'loaded-spring', 'stored-spring', 'caging-bolt'],
      },
    ],
    answered: ['spring*', 'compressor', 'muelle*', 'resorte*', 'ressort*', 'feder*'],
    signal: 'warning',
    grave: true,
    text: HAZARD_TEXTS.springs,
  },
  {
    id: 'brake-hydraulics',
    title: 'an open brake or clutch line',
    triggers: [
      { verbs: OPENING, families: ['glycol brake fluid', 'silicone brake fluid'] },
      { verbs: OPENING, marks: ['brake-hydraulic', 'brake-line'] },
    ],
    answered: [
      'brake fluid',
      'clutch fluid',
      'goggles',
      'eye*',
      'pedal',
      'líquido de frenos',
      'gafas',
      'liquide de frein',
      'lunettes',
      'bremsflüssigkeit',
      'schutzbrille',
    ],
    signal: 'warning',
    grave: true,
    text: HAZARD_TEXTS['brake-hydraulics'],
  },
  {
    id: 'fluid-pressure',
    title: 'oil or air under pressure',
    triggers: [
      { verbs: OPENING, families: ['mineral hydraulic oil'] },
      { verbs: ['disconnect', 'separate'], marks: ['pressure-line'] },
    ],
    answered: [
      'pressure*',
      'pierce*',
      'jet',
      'jets',
      'presión',
      'pression*',
      'druck',
      'hochdruck*',
      'drucklos',
    ],
    signal: 'warning',
    grave: true,
    text: HAZARD_TEXTS['fluid-pressure'],
  },
  {
    id: 'hot-fluid',
    title: 'hot fluid',
    triggers: [
      { verbs: ['drain'], families: ['engine oil', 'gear oil', 'coolant'] },
      { verbs: ['remove', 'uncap'], fillerOf: ['coolant'] },
    ],
    answered: [
      'hot',
      'burn*',
      'scald*',
      'cool',
      'cold',
      'warm',
      'caliente',
      'quema*',
      'frío',
      'chaud*',
      'brûl*',
      'froid*',
      'heiß*',
      'verbrenn*',
      'verbrüh*',
      'kalt*',
      'abgekühlt',
    ],
    signal: 'caution',
    grave: false,
    text: HAZARD_TEXTS['hot-fluid'],
  },
  {
    id: 'fuel',
    title: 'fuel',
    triggers: [
      { verbs: [...OPENING, 'remove', 'cut'], marks: ['fuel', 'fuel-line', 'fuel-system'] },
      { verbs: OPENING, families: ['fuel'] },
    ],
    answered: [
      'fuel',
      'petrol',
      'gasoline',
      'diesel',
      'ignition source*',
      'flame*',
      'spark*',
      'combustible',
      'gasolina',
      'carburant',
      'essence',
      'kraftstoff*',
      'zündquelle*',
    ],
    signal: 'warning',
    grave: true,
    text: HAZARD_TEXTS.fuel,
  },
  {
    id: 'battery',
    title: 'a battery',
    triggers: [
      { verbs: ['disconnect', 'remove', 'charge'], names: ['battery'] },
      { verbs: ['disconnect', 'remove', 'charge'], marks: ['battery'] },
    ],
    answered: ['batter*', 'negative', 'batería*', 'batterie*', 'negativ*', 'accu*'],
    signal: 'caution',
    grave: false,
    text: HAZARD_TEXTS.battery,
  },
  {
    id: 'restraints',
    title: 'an airbag or belt tensioner',
    triggers: [
      { verbs: ['disconnect', 'remove', 'separate', 'connect', 'install'], marks: ['restraint', 'airbag'] },
    ],
    answered: [
      'airbag*',
      'air bag*',
      'restraint*',
      'tensioner*',
      'inflat*',
      'pretensor*',
      'prétensionneur*',
      'coussin*',
      'gurtstraffer',
    ],
    signal: 'warning',
    grave: true,
    text: HAZARD_TEXTS.restraints,
  },
  {
    id: 'refrigerant',
    title: 'refrigerant',
    triggers: [{ verbs: [...OPENING, 'recover', 'charge', 'evacuate'], families: ['refrigerant'] }],
    answered: ['refrigerant*', 'frostbite', 'refrigerante*', 'frigorigène*', 'kältemittel*'],
    signal: 'caution',
    grave: false,
    text: HAZARD_TEXTS.refrigerant,
  },
  {
    id: 'high-voltage',
    title: 'high voltage',
    triggers: [
      { verbs: ['disconnect', 'connect', 'remove', 'loosen', 'separate', 'cut'], marks: ['high-voltage'] },
      { verbs: ['disconnect'], marks: ['service-plug'] },
    ],
    answered: [
      'high voltage',
      'high-voltage',
      'power side',
      'lado de potencia',
      'côté puissance',
      'leistungsseite',
      'volt*',
      'electrocut*',
      'alta tensión',
      'haute tension',
      'hochvolt*',
      'spannung*',
    ],
    signal: 'danger',
    grave: true,
    text: HAZARD_TEXTS['high-voltage'],
  },
  {
    id: 'fibre-dust',
    title: 'brake or clutch lining dust',
    triggers: [
      {
        verbs: ['clean', 'remove', 'drill', 'cut', 'separate'],
        marks: ['asbestos', 'friction', 'brake-lining', 'clutch-lining'],
      },
    ],
    answered: [
      'dust',
      'asbestos',
      'fibre*',
      'fiber*',
      'polvo',
      'amianto',
      'poussière*',
      'amiante',
      'staub',
      'asbest',
    ],
    signal: 'warning',
    grave: false,
    text: HAZARD_TEXTS['fibre-dust'],
  },
  {
    id: 'moving-belts',
    title: 'a running engine',
    triggers: [
      {
        verbs: ['inspect', 'measure', 'adjust', 'test', 'set', 'read', 'clean'],
        marks: ['belt', 'drive-belt', 'fan', 'rotating'],
        engineRuns: true,
      },
    ],
    answered: [
      'belt*',
      'fan*',
      'rotat*',
      'turning',
      'correa*',
      'ventilador*',
      'courroie*',
      'ventilateur*',
      'riemen*',
      'lüfter*',
    ],
    signal: 'warning',
    grave: false,
    text: HAZARD_TEXTS['moving-belts'],
  },
  {
    id: 'solvent-and-dust',
    title: 'solvent vapour or silica dust',
    triggers: [{ supplies: ['solvent', 'flammable', 'isocyanate', 'silica'] }],
    answered: [
      'vapour*',
      'vapor*',
      'fume*',
      'ventilat*',
      'solvent*',
      'dust',
      'mask',
      'disolvente*',
      'ventil*',
      'solvant*',
      'masque',
      'lösemittel*',
      'lüft*',
      'maske',
    ],
    signal: 'caution',
    grave: false,
    text: HAZARD_TEXTS['solvent-and-dust'],
  },
];
