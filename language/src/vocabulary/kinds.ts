// The kinds of thing a procedure can name. Sections declare them, verbs act on them.

export const THING_KINDS = [
  'part',
  'fastener',
  'connection',
  'circuit',
  'fluid',
  'adjustment',
  'condition',
  'limit',
  'supply',
  'temporary',
  'place',
  'tool',
  'vehicle',
  'source',
  'message',
  'rule',
  'operation',
] as const;

/** What a declared name is. `machine` is the built-in `vehicle`, `engine` and `suspension` of the running job. */
export type ThingKind = (typeof THING_KINDS)[number] | 'machine';

/** Names that every procedure may use without declaring them. */
export const BUILT_IN_NAMES = ['vehicle', 'suspension', 'engine', 'odometer', 'codes'] as const;

/** How many of a thing a vehicle with two worked sides has. */
export type PerSide = 'each side' | 'once';

/** Parts, fasteners, connections and adjustments count per side; all else once. */
export function perSideByDefault(kind: ThingKind): PerSide {
  return kind === 'part' || kind === 'fastener' || kind === 'connection' || kind === 'adjustment'
    ? 'each side'
    : 'once';
}

/** Output languages of guides. */
export const LANGUAGES = ['en', 'es', 'fr', 'de'] as const;
export type Language = (typeof LANGUAGES)[number];

/** Words in each output language. */
export type Words = Readonly<Record<Language, string>>;
