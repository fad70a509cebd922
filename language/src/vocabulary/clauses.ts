// Clause words of entries and of statements: the shape of what follows, where they may stand, what they say.
// The parser reads the shape, completion and checks the kinds, hover and reference the docs.
import type { QuantityKind } from '../quantity/dimension.js';
import type { ThingKind } from './kinds.js';

/**
 * What stands after a clause word.
 * - `names`: things, with counts (`held by 1 of cover-bolt, axle-nut`), `parking-brake applied` with a value.
 * - `spec`: a quantity, range, bound or stages (`torque 60 N·m then 90°`), or `?`.
 * - `raw`: text for a standard's own reader (`class 10.9`, `SAE 75W-90`, `order star`), up to a comma or clause word, or `?`.
 * - `words`: free words that the house chooses (`marked critical`, `positions seated, pushed-in`).
 * - `option`: an option's name and its values (`option axle light, heavy`).
 * - `flag`: nothing.
 * - `reason`: nothing but a remark after the colon (`no torque: hand tight by the maker's sheet`).
 */
export type ClauseShape = 'names' | 'spec' | 'raw' | 'words' | 'option' | 'flag' | 'reason';

export interface ClauseDef {
  readonly word: string;
  readonly shape: ClauseShape;
  /** Kinds whose entries may have it. */
  readonly on: readonly ThingKind[];
  /** For `names`: kinds that may be named. */
  readonly names?: readonly ThingKind[];
  /** For `spec`: the kinds of quantity that fit; absent where the thing decides, as for a limit. */
  readonly quantity?: readonly QuantityKind[];
  /** For `spec`: the number stands without a unit (`count 3`, `years 2018 to 2025`). */
  readonly unitless?: true;
  readonly docs: string;
}

const clause = (
  word: string,
  shape: ClauseShape,
  on: readonly ThingKind[],
  docs: string,
  names?: readonly ThingKind[],
): ClauseDef => (names ? { word, shape, on, docs, names } : { word, shape, on, docs });
const measured = (
  word: string,
  on: readonly ThingKind[],
  quantity: readonly QuantityKind[],
  docs: string,
): ClauseDef => ({ word, shape: 'spec', on, docs, quantity });
const numbered = (word: string, on: readonly ThingKind[], docs: string): ClauseDef => ({
  word,
  shape: 'spec',
  on,
  docs,
  unitless: true,
});

const HOLDERS: readonly ThingKind[] = ['fastener', 'connection', 'part', 'condition'];
const GRADED: readonly ThingKind[] = ['fluid', 'supply'];
const SPECIFIED: readonly ThingKind[] = [
  'fastener',
  'fluid',
  'limit',
  'supply',
  'adjustment',
  'part',
  'condition',
  'tool',
];

/** Clauses of entries in declaration sections. A word that two kinds use means the same for both. */
export const ENTRY_CLAUSES: readonly ClauseDef[] = [
  clause(
    'held by',
    'names',
    ['part', 'connection', 'temporary'],
    'Comes off only when these are off.',
    HOLDERS,
  ),
  clause('clamped by', 'names', ['part', 'connection'], 'Comes off when these are slack; they stay on.', [
    'fastener',
  ]),
  clause(
    'behind',
    'names',
    ['part', 'fastener', 'connection', 'circuit', 'temporary', 'place', 'limit', 'adjustment'],
    'Cannot be reached until these are off.',
    ['part', 'temporary', 'connection'],
  ),
  clause(
    'in',
    'names',
    ['part', 'connection', 'fluid', 'fastener', 'temporary'],
    'Rides along with this; for a connection, the circuit it belongs to; for a fluid, where it is.',
    ['part', 'circuit', 'place', 'fluid'],
  ),
  clause(
    'on',
    'names',
    ['connection', 'part', 'temporary'],
    'Sits on this part; for a sealant, the faces it goes on.',
    ['part', 'place'],
  ),
  clause('sealed with', 'names', ['part'], 'Goes on with this sealant, `on` these faces.', ['supply']),
  clause('uses', 'names', ['circuit'], 'The fluid that fills the circuit.', ['fluid']),
  clause('disturbed by', 'names', ['adjustment'], 'Removing or moving any of these upsets the setting.', [
    'part',
    'fastener',
    'connection',
    'adjustment',
  ]),
  clause('drain at', 'names', ['fluid'], 'The plug, cover or hose that lets it out.', [
    'fastener',
    'part',
    'connection',
  ]),
  clause('fill at', 'names', ['fluid'], 'The plug or cap it goes in by.', [
    'fastener',
    'part',
    'connection',
    'place',
  ]),
  clause('bleed at', 'names', ['circuit'], 'The screws or valves that let the air out.', [
    'fastener',
    'place',
    'part',
  ]),
  clause('limit', 'names', ['adjustment'], 'The limit that the setting must meet.', ['limit']),
  clause('closes', 'names', ['part', 'fastener', 'connection'], 'Opening this lets this fluid out.', [
    'fluid',
  ]),
  measured('torque', ['fastener', 'tool'], ['torque', 'angle'], 'How tight; on a wrench, its range.'),
  measured(
    'prevailing',
    ['fastener'],
    ['torque'],
    'Drag of a self-locking nut as it runs down, measured on its last turn: it is added to the torque that is set.',
  ),
  clause('no torque', 'reason', ['fastener'], 'Rightly tightened by hand or without a figure; say why.'),
  measured('fill', ['fluid'], ['volume', 'mass'], 'How much goes in.'),
  clause('until level at', 'names', ['fluid'], 'The mark or edge that says full.', [
    'place',
    'fastener',
    'part',
  ]),
  measured('mass', ['part', 'vehicle', 'fluid'], ['mass'], 'Weight, or charge by mass.'),
  measured('settle', ['fluid'], ['time'], 'How long it must stand before the level can be read.'),
  measured('fit within', ['supply'], ['time'], 'The joint must close this soon after the supply goes on.'),
  measured('torque after', ['supply'], ['time'], 'Final torque waits this long.'),
  measured('fill after', ['supply'], ['time'], 'Fluid waits this long.'),
  measured('run after', ['supply'], ['time'], 'Running or road use waits this long.'),
  measured(
    'amount',
    ['supply', 'part'],
    ['volume', 'mass', 'length', 'area', 'count'],
    'How much one job takes.',
  ),
  measured(
    'container',
    ['supply', 'fluid'],
    ['volume', 'mass'],
    'What one bottle, tube or can holds: the guide says how many to pull.',
  ),
  clause('new', 'spec', ['limit'], 'The figure of a new part.'),
  clause('wear', 'spec', ['limit'], 'How much the figure falls from one service to the next.'),
  measured('rated', ['tool'], ['mass', 'force', 'pressure', 'voltage'], 'Greatest load.'),
  measured(
    'length',
    ['fastener', 'part', 'tool'],
    ['length'],
    'Length under the head, or of the part; of a torque wrench, from the drive to the middle of the grip.',
  ),
  measured(
    'offset',
    ['tool'],
    ['length'],
    'Of a crowfoot or handle extension in line with the wrench, from the drive to the bolt: it changes what is set on the wrench. An extension straight down from the drive has none.',
  ),
  measured('grip', ['fastener'], ['length'], 'Clamped length, for the stretch of an angle stage.'),
  measured('hex', ['fastener'], ['length'], 'Hexagon across flats.'),
  measured('square', ['fastener'], ['length'], 'Square drive.'),
  clause('hexalobular', 'raw', ['fastener'], 'Six-lobe socket or head size, T or E number.'),
  measured('twelve-point', ['fastener'], ['length'], 'Twelve-point head across flats.'),
  clause('slot', 'flag', ['fastener'], 'Slotted head.'),
  clause('cross-slot', 'raw', ['fastener'], 'Cross recess, with its size.'),
  numbered('count', ['part', 'connection', 'supply'], 'How many there are.'),
  clause('at least', 'spec', ['limit'], 'Lower limit.'),
  clause('at most', 'spec', ['limit'], 'Upper limit.'),
  numbered('years', ['vehicle'], 'Model years in the fleet.'),
  clause('option', 'option', ['vehicle'], 'A way these vehicles differ, with its values.'),
  clause(
    'vin',
    'raw',
    ['vehicle'],
    'Range of vehicle identification numbers, or the one of the only vehicle it is.',
  ),
  clause('layout', 'raw', ['fastener'], 'How the set lies: `circle`, `2 rows`, `3 columns`.'),
  clause('order', 'raw', ['fastener'], 'Tightening order: `star`, `cross`, `inside-out`, or the positions.'),
  clause(
    'positions',
    'words',
    ['part'],
    'Places the part can be moved between; the first is where it rests.',
  ),
  clause('number', 'raw', ['part', 'fastener', 'connection', 'supply', 'tool', 'fluid'], 'Part number.'),
  clause('per', 'raw', SPECIFIED, 'The sheet the figure comes from.'),
  clause('class', 'raw', ['fastener'], 'Property class by ISO 898 or ISO 3506.'),
  clause('grade', 'raw', ['fastener'], 'Strength grade by SAE J429.'),
  clause('SAE', 'raw', GRADED, 'Viscosity grade by SAE J300 or J306.'),
  clause('API', 'raw', GRADED, 'Service category by API.'),
  clause('DOT', 'raw', GRADED, 'Brake fluid by FMVSS 116.'),
  clause('ACEA', 'raw', GRADED, 'Engine oil sequence by ACEA.'),
  clause('ISO', 'raw', GRADED, 'Grade by an ISO standard.'),
  clause('NLGI', 'raw', GRADED, 'Grease consistency by NLGI.'),
  clause('ASTM', 'raw', GRADED, 'Specification by ASTM.'),
  clause('refrigerant', 'raw', GRADED, 'Refrigerant number.'),
  measured('mix', ['fluid'], ['ratio'], 'Share of concentrate in the mix.'),
  clause(
    'renew',
    'flag',
    ['part', 'fastener', 'connection', 'supply'],
    'Never goes back on: a new one is fitted.',
  ),
  clause(
    'once',
    'flag',
    ['part', 'fastener', 'connection', 'adjustment', 'fluid', 'circuit', 'limit'],
    'One on the vehicle, whichever sides are worked.',
  ),
  clause(
    'each side',
    'flag',
    [
      'part',
      'fastener',
      'connection',
      'adjustment',
      'fluid',
      'circuit',
      'limit',
      'condition',
      'place',
      'tool',
    ],
    'One on each side.',
  ),
  clause('on ground', 'flag', ['fastener'], 'Torqued with the vehicle on its wheels.'),
  clause('at ride height', 'flag', ['fastener'], 'Torqued with the suspension loaded as on the road.'),
  clause('dry', 'flag', ['fastener'], 'The torque holds for clean dry threads.'),
  clause('oiled', 'flag', ['fastener'], 'The torque holds for oiled threads.'),
  clause('threadlocker', 'raw', ['fastener'], 'Threadlocker strength, or the supply that is used.'),
  clause('lubricant', 'raw', ['fastener'], 'Lubricant on the threads.'),
  clause('sealant', 'flag', ['supply'], 'A sealant: it must go on clean faces and cure.'),
  clause('cleaner', 'flag', ['supply'], 'Cleans faces.'),
  clause('grease', 'flag', ['supply'], 'A grease or lubricant.'),
  clause(
    'marked',
    'words',
    [
      'part',
      'fastener',
      'connection',
      'circuit',
      'fluid',
      'place',
      'condition',
      'temporary',
      'tool',
      'supply',
      'limit',
      'adjustment',
    ],
    'Marks that house rules look for.',
  ),
  clause('free', 'flag', ['condition'], 'Need not be restored at the end.'),
];

/** Clauses of statements. */
export interface StepClauseDef {
  readonly word: string;
  readonly shape: ClauseShape | 'names or spec' | 'event';
  /** Kinds of quantity that fit, whatever the verb; absent where the verb decides. */
  readonly quantity?: readonly QuantityKind[];
  readonly docs: string;
}
const stepClause = (
  word: string,
  shape: StepClauseDef['shape'],
  docs: string,
  quantity?: readonly QuantityKind[],
): StepClauseDef => (quantity ? { word, shape, docs, quantity } : { word, shape, docs });

export const STEP_CLAUSES: readonly StepClauseDef[] = [
  stepClause('with', 'names', 'The tool, supply or temporary thing used; `or` names an alternative.'),
  stepClause('to', 'names or spec', 'What it goes to, the position it moves to, or the value it reaches.'),
  stepClause('at', 'names or spec', 'The place, or how many places.'),
  stepClause('from', 'names', 'What it comes off.'),
  stepClause('on', 'names', 'What it sits on.'),
  stepClause('in', 'names', 'What it goes in.'),
  stepClause('into', 'names', 'What receives it.'),
  stepClause('by', 'spec', 'By how much.', ['length', 'angle']),
  stepClause('until level at', 'names', 'The mark that says full.'),
  stepClause('after', 'spec', 'How much later.', ['time', 'length']),
  stepClause('for', 'spec', 'How long.', ['time']),
  stepClause('since', 'event', 'Counted from this action.'),
  stepClause('stage', 'raw', 'Which stage of a staged torque.'),
  stepClause('order', 'raw', 'Order for this action alone.'),
  stepClause('bead', 'spec', 'Width of the bead.', ['length']),
  stepClause('film', 'spec', 'Thickness of the film.', ['length']),
  stepClause('per', 'raw', 'The sheet the figure comes from.'),
  stepClause('on ground', 'flag', 'With the vehicle on its wheels.'),
  stepClause('at ride height', 'flag', 'With the suspension loaded as on the road.'),
  stepClause('side', 'words', 'Of `perform` alone: the side that the operation is done on.'),
];

export const ENTRY_CLAUSE_BY_WORD: ReadonlyMap<string, ClauseDef> = new Map(
  ENTRY_CLAUSES.map((c) => [c.word, c]),
);
export const STEP_CLAUSE_BY_WORD: ReadonlyMap<string, StepClauseDef> = new Map(
  STEP_CLAUSES.map((c) => [c.word, c]),
);
