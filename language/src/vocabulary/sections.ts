// Section words: what they declare or which phase of the work they hold.
import type { ThingKind, Words } from './kinds.js';

export interface SectionDef {
  readonly word: string;
  /** The kind its entries declare; absent for prerequisites and for phases of work. */
  readonly declares?: ThingKind;
  /** True for phases of work, which hold steps. */
  readonly work?: true;
  readonly docs: string;
  readonly heading: Words;
}

const declared = (word: string, declares: ThingKind, docs: string, heading: Words): SectionDef => ({
  word,
  declares,
  docs,
  heading,
});
const phase = (word: string, docs: string, heading: Words): SectionDef => ({
  word,
  work: true,
  docs,
  heading,
});

export const SECTIONS: readonly SectionDef[] = [
  {
    word: 'prerequisites',
    docs: 'What must hold, be at hand or have been done before the job starts.',
    heading: {
      en: 'Before you start',
      es: 'Antes de empezar',
      fr: 'Avant de commencer',
      de: 'Vor dem Beginn',
    },
  },
  declared('parts', 'part', 'Parts that come off, go on or are renewed.', {
    en: 'Parts',
    es: 'Piezas',
    fr: 'Pièces',
    de: 'Teile',
  }),
  declared('fasteners', 'fastener', 'Sets of bolts, nuts, screws, clips: count, thread, head, torque.', {
    en: 'Fasteners',
    es: 'Fijaciones',
    fr: 'Fixations',
    de: 'Befestigungen',
  }),
  declared(
    'connections',
    'connection',
    'Plugs, hoses, pipes, joints that are taken apart and joined again.',
    { en: 'Connections', es: 'Conexiones', fr: 'Raccords', de: 'Anschlüsse' },
  ),
  declared('circuits', 'circuit', 'Closed hydraulic or gas circuits that must be bled or evacuated.', {
    en: 'Circuits',
    es: 'Circuitos',
    fr: 'Circuits',
    de: 'Kreise',
  }),
  declared(
    'fluids',
    'fluid',
    'Oils, coolants, brake fluid, refrigerant: grade, amount, where it goes in and out.',
    { en: 'Fluids', es: 'Fluidos', fr: 'Fluides', de: 'Flüssigkeiten' },
  ),
  declared('adjustments', 'adjustment', 'Settings that the work disturbs: toe, play, tension, marks.', {
    en: 'Adjustments',
    es: 'Ajustes',
    fr: 'Réglages',
    de: 'Einstellungen',
  }),
  declared('conditions', 'condition', 'Positions of the vehicle that the work changes and restores.', {
    en: 'Conditions',
    es: 'Condiciones',
    fr: 'Conditions',
    de: 'Zustände',
  }),
  declared('limits', 'limit', 'What is measured and between which values it must lie.', {
    en: 'Limits',
    es: 'Límites',
    fr: 'Limites',
    de: 'Grenzwerte',
  }),
  declared('supplies', 'supply', 'Sealants, greases, cleaners and other consumables.', {
    en: 'Supplies',
    es: 'Consumibles',
    fr: 'Consommables',
    de: 'Verbrauchsmaterial',
  }),
  declared('temporary', 'temporary', 'Things that are placed for the job and must be gone at its end.', {
    en: 'Placed for the job',
    es: 'Colocado para el trabajo',
    fr: 'Posé pour le travail',
    de: 'Für die Arbeit angebracht',
  }),
  declared('places', 'place', 'Spots on the vehicle: lifting points, faces, marks, pedals.', {
    en: 'Places',
    es: 'Lugares',
    fr: 'Emplacements',
    de: 'Stellen',
  }),
  declared('tools', 'tool', 'Tools worth naming, with their range or rating.', {
    en: 'Tools',
    es: 'Herramientas',
    fr: 'Outils',
    de: 'Werkzeuge',
  }),
  declared('vehicles', 'vehicle', 'The machines of the fleet with years and options.', {
    en: 'Vehicles',
    es: 'Vehículos',
    fr: 'Véhicules',
    de: 'Fahrzeuge',
  }),
  declared('sources', 'source', 'Sheets and manuals that figures are taken from.', {
    en: 'Sources',
    es: 'Fuentes',
    fr: 'Sources',
    de: 'Quellen',
  }),
  declared('messages', 'message', 'Warnings that several procedures share.', {
    en: 'Messages',
    es: 'Avisos',
    fr: 'Messages',
    de: 'Hinweise',
  }),
  declared('rules', 'rule', 'House rules that every procedure here must keep.', {
    en: 'House rules',
    es: 'Reglas de la casa',
    fr: "Règles de l'atelier",
    de: 'Hausregeln',
  }),
  phase('preparation', 'Make the machine safe and ready.', {
    en: 'Preparation',
    es: 'Preparación',
    fr: 'Préparation',
    de: 'Vorbereitung',
  }),
  phase('removal', 'Take things off.', { en: 'Removal', es: 'Desmontaje', fr: 'Dépose', de: 'Ausbau' }),
  phase('inspection', 'Clean, look and measure.', {
    en: 'Inspection',
    es: 'Inspección',
    fr: 'Contrôle',
    de: 'Prüfung',
  }),
  phase('installation', 'Put things back.', {
    en: 'Installation',
    es: 'Montaje',
    fr: 'Repose',
    de: 'Einbau',
  }),
  phase('completion', 'Check, hand back, sign.', {
    en: 'Completion',
    es: 'Finalización',
    fr: 'Finition',
    de: 'Abschluss',
  }),
];

export const SECTION_BY_WORD: ReadonlyMap<string, SectionDef> = new Map(SECTIONS.map((s) => [s.word, s]));
