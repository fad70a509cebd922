/**
 * Where the numbers of this folder come from. Every table row carries one of these keys, so a hover,
 * a message and the reference page can name the book beside the number.
 */

/** How a value may be used: a standard or handbook may block, practice and memory may only ask. */
export type SourceKind = 'standard' | 'handbook' | 'computed' | 'common practice' | 'memory';

/** One source of trade data: what to print, and how far it may be trusted. */
export interface Source {
  readonly title: string;
  readonly kind: SourceKind;
}

/** The sources, by key. Standards were mostly read as second parties quote them; the standard is cited. */
export const SOURCES = {
  ISO261: { title: 'ISO 261 / ISO 724, metric threads', kind: 'standard' },
  B1_1: { title: 'ASME B1.1, unified inch threads', kind: 'standard' },
  B1_20: { title: 'ASME B1.20.1, taper pipe threads', kind: 'standard' },
  ISO228: { title: 'ISO 228-1 / ISO 7-1, pipe threads', kind: 'standard' },
  ISO898_1: { title: 'ISO 898-1, bolts and screws', kind: 'standard' },
  ISO898_2: { title: 'ISO 898-2, nuts', kind: 'standard' },
  J429: { title: 'SAE J429, inch bolts', kind: 'standard' },
  ISO3506: { title: 'ISO 3506-1, stainless fasteners', kind: 'standard' },
  ISO4014: { title: 'ISO 4014 / ISO 4017, hexagon heads', kind: 'standard' },
  DIN931: { title: 'DIN 931 / DIN 933, hexagon heads before ISO 272:1982', kind: 'standard' },
  ISO4162: { title: 'ISO 4162 / ISO 15071, hexagon flange bolts', kind: 'standard' },
  ISO4161: { title: 'ISO 4161 / DIN 6923, hexagon flange nuts', kind: 'standard' },
  JIS1180: { title: 'JIS B 1180, hexagon and small hexagon heads', kind: 'standard' },
  JIS1189: { title: 'JIS B 1189, hexagon flange bolts', kind: 'standard' },
  B18_2_1: { title: 'ASME B18.2.1, inch hexagon heads', kind: 'standard' },
  ISO4762: { title: 'ISO 4762, hexagon socket heads', kind: 'standard' },
  ISO10642: { title: 'ISO 10642 / ISO 7380-1, countersunk and button heads', kind: 'standard' },
  DIN7984: { title: 'DIN 7984, low socket heads', kind: 'standard' },
  ISO4026: { title: 'ISO 4026 to ISO 4029, set screws', kind: 'standard' },
  ISO10664: { title: 'ISO 10664, hexalobular drive', kind: 'standard' },
  SHIGLEY: { title: "Shigley's Mechanical Engineering Design, 9th ed., ch. 8", kind: 'handbook' },
  MOTT: { title: 'Mott, Machine Elements in Mechanical Design', kind: 'handbook' },
  BICKFORD: { title: 'Bickford, Introduction to the Design and Behavior of Bolted Joints', kind: 'handbook' },
  AC43: { title: 'FAA AC 43.13-1B, section 7', kind: 'handbook' },
  PCC1: { title: 'ASME PCC-1, flange joint assembly', kind: 'standard' },
  ISO6789: { title: 'ISO 6789-1:2017, hand torque tools', kind: 'standard' },
  NAVEDTRA: { title: 'NAVEDTRA 14315, torque wrench adapters', kind: 'handbook' },
  J306: { title: 'SAE J306 (February 2019), gear oils', kind: 'standard' },
  J300: { title: 'SAE J300, engine oils', kind: 'standard' },
  API1560: { title: 'API 1560, gear oil service', kind: 'standard' },
  API1509: { title: 'API 1509, engine oil service', kind: 'standard' },
  ACEA: { title: 'ACEA oil sequences', kind: 'standard' },
  FMVSS116: { title: '49 CFR 571.116 (FMVSS 116), brake fluids', kind: 'standard' },
  ISO3448: { title: 'ISO 3448, viscosity classes', kind: 'standard' },
  NLGI: { title: 'NLGI consistency numbers (ASTM D217)', kind: 'standard' },
  D3306: { title: 'ASTM D3306, engine coolants', kind: 'standard' },
  ASHRAE_EG: {
    title: 'ASHRAE Fundamentals, ethylene glycol by volume (as CoolProp 8.0.0 carries it)',
    kind: 'handbook',
  },
  LANGE: { title: "Lange's Handbook of Chemistry, 15th ed., table 5.13", kind: 'handbook' },
  ISO22241: { title: 'ISO 22241-1, AUS 32', kind: 'standard' },
  ISO817: { title: 'ISO 817, refrigerant designations', kind: 'standard' },
  CFR82: { title: '40 CFR 82 subpart B, vehicle air conditioning', kind: 'standard' },
  ISO3779: { title: 'ISO 3779 and 49 CFR 565, vehicle identification numbers', kind: 'standard' },
  J2012: { title: 'SAE J2012 / ISO 15031-6, trouble codes', kind: 'standard' },
  COMPUTED: { title: 'computed here from a standard formula', kind: 'computed' },
  PRACTICE: { title: 'common practice', kind: 'common practice' },
  MEMORY: { title: 'recalled, not checked against a source', kind: 'memory' },
} as const satisfies Record<string, Source>;

/** Key of a source in {@link SOURCES}. */
export type SourceKey = keyof typeof SOURCES;

/** The printed form of a source: `ISO 898-1, bolts and screws`. */
export function sourceTitle(key: SourceKey): string {
  return SOURCES[key].title;
}
