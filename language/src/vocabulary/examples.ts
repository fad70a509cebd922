// A line or two of Baywright for every section, head and clause word, for the reference. Invented figures.

/** For each clause of an entry: how it stands under the entry. */
export const ENTRY_CLAUSE_EXAMPLES: Readonly<Record<string, string>> = {
  'held by': 'held by hub-bolt, axle-nut',
  'clamped by': 'clamped by hose-clamp',
  behind: 'behind wheel',
  in: 'in caliper',
  on: 'on caliper',
  'sealed with': 'sealed with flange-sealant on cover-face',
  uses: 'uses brake-fluid',
  'disturbed by': 'disturbed by lower-arm, tie-rod',
  'drain at': 'drain at drain-plug',
  'fill at': 'fill at fill-plug',
  'bleed at': 'bleed at bleed-screw',
  limit: 'limit pedal-play',
  closes: 'closes axle-oil',
  torque: 'torque 60 N·m then 90°, per "HL-114"',
  'no torque': 'no torque: Tightened by hand, by the sheet of the cap.',
  fill: 'fill 6.7 L, per "HL-210"',
  'until level at': 'until level at dipstick',
  mass: 'mass 19 kg',
  settle: 'settle 10 min',
  'fit within': 'fit within 10 min',
  'torque after': 'torque after 1 h',
  'fill after': 'fill after 2 h',
  'run after': 'run after 24 h',
  amount: 'amount 20 mL',
  container: 'amount 20 mL, container 300 mL',
  new: 'at least 22.0 mm, new 24.0 mm',
  wear: 'at least 3.0 mm, wear 0.3 mm',
  prevailing: 'torque 90 N·m, prevailing 12 N·m, per "HL-114"',
  rated: 'rated 3000 kg',
  length: 'length 35 mm',
  offset: 'offset 38 mm',
  grip: 'grip 28 mm',
  hex: '4 of M12x1.5, class 10.9, hex 18 mm',
  square: '1 of 3/4-14 NPT, square 1/2 in',
  hexalobular: '3 of M8x1.25, hexalobular T40',
  'twelve-point': '8 of M10x1.5, twelve-point 12 mm',
  slot: '2 of M4x0.7, slot',
  'cross-slot': '2 of M5x0.8, cross-slot 2',
  count: 'count 4',
  'at least': 'at least 22.0 mm',
  'at most': 'at most 0.05 mm',
  years: 'years 2018 to 2025',
  option: 'option axle light, heavy',
  vin: 'vin SX7M300ALJ1000001 to SX7M300ALS1999999',
  layout: 'layout 2 rows',
  order: 'order inside-out',
  positions: 'positions seated, pushed-in',
  number: 'number "HB-2041"',
  per: 'torque 115 N·m, per "HL-114"',
  class: '4 of M12x1.5, class 10.9, hex 18 mm',
  grade: '12 of 1/2-13 UNC, grade 8, hex 3/4 in',
  SAE: 'SAE 75W-90',
  API: 'API GL-5',
  DOT: 'DOT 4',
  ACEA: 'ACEA C3',
  ISO: 'ISO VG 46',
  NLGI: 'NLGI 2',
  ASTM: 'ASTM D3306',
  refrigerant: 'refrigerant R-1234yf',
  mix: 'mix 50 %',
  renew: 'renew',
  once: 'once',
  'each side': 'each side',
  'on ground': 'torque 160 N·m, on ground',
  'at ride height': 'torque 90 N·m, at ride height',
  dry: 'dry',
  oiled: 'oiled',
  threadlocker: 'threadlocker medium',
  lubricant: 'lubricant anti-seize',
  sealant: 'sealant',
  cleaner: 'cleaner',
  grease: 'grease',
  marked: 'marked critical',
  free: 'free',
};

/** For each clause of a statement: a statement that has it. */
export const STEP_CLAUSE_EXAMPLES: Readonly<Record<string, string>> = {
  with: 'pull hub with hub-puller or pry-bar',
  to: 'move axle to pushed-in',
  at: 'raise vehicle at sill-points',
  from: 'fill brake-fluid from bottle',
  on: 'place magnet on cover',
  in: 'place rag in filler-neck',
  into: 'drain drive-oil into pan',
  by: 'move seat by 120 mm',
  'until level at': 'fill axle-oil, 1.9 L, until level at fill-plug',
  after: 'recheck wheel-nut, after 80 km',
  for: 'pump brake-pedal, for 30 s',
  since: 'wait 10 min, since disconnect battery-negative',
  stage: 'torque head-bolt, stage 1',
  order: 'torque hub-bolt, order cross',
  bead: 'apply flange-sealant to cover-face, bead 3 mm',
  film: 'apply grease to bore, film 0.2 mm',
  per: 'torque hub-bolt, 115 N·m, per "HL-114"',
  'on ground': 'torque wheel-nut, on ground',
  'at ride height': 'torque arm-bolt, at ride height',
  side: 'perform wheel-off from WH-01, side left',
};

/** For each word that opens a line, with what must stand around it left out. */
export const HEAD_EXAMPLES: Readonly<Record<string, string>> = {
  procedure: 'procedure FH-12: Front hub and bearing, replace',
  catalogue: 'catalogue: Maristow 300 delivery van',
  use: 'use "../catalogue/maristow-300.bay"',
  'applies to': 'applies to maristow-300 from 2018 to 2025',
  sides: 'sides left, right',
  labour: 'labour 1 h 40 min, when engine diesel',
  crew: 'crew 2: One at the pedal, one at the wheel.',
  revision: 'revision 4 on 2026-10-05: Hub bolt torque raised after the spring trial.',
  status: 'status released by RB, TK on 2026-10-07',
  review: 'review 2028-10-07',
  accept: 'accept F203: The maker gives this low figure for the plastic housing.',
  operation: 'operation wheel-off: Wheel off, van on stands',
  step: 'step: Take the brake off',
  item: 'item: A second person is free for ten minutes.',
  do: 'do: Brush the face to bare metal.',
  hold: 'hold: A second technician checks the hub bolts and the axle nut.',
  stop: 'stop: Tag the van and call the shop lead.',
  note: 'note: The long bolt goes at the rear.',
  reject: 'reject: cracks, scoring, rust pits',
  expect: 'expect: No drip in ten minutes.',
  because: 'because: It came back in March with the cloth left in.',
  danger: 'danger: The rail holds 400 V until it is proved dead.',
  warning: 'warning: A van that falls can kill. Set it on rated stands.',
  caution: 'caution: Hot oil burns. Wait until the housing is warm to the hand.',
  notice: 'notice: Never let the caliper hang from its hose.',
  picture: 'picture "../pictures/hub.svg": The knuckle from the wheel side. A hub bolts, B axle nut.',
  clip: 'clip "../pictures/hub.mp4" at 5 min 36 s: How the puller sits.',
  perform: 'perform wheel-off from WH-01',
  when: 'when axle heavy',
  if: 'if below limit',
  otherwise: 'otherwise',
  repeat: 'repeat 3 times: Until no bubble comes.',
};

/** For each section word: a section with one entry. */
export const SECTION_EXAMPLES: Readonly<Record<string, string>> = {
  prerequisites: `prerequisites
  parking-brake applied
  axle-stands, rated 1500 kg
  item: The floor is level and hard.`,
  parts: `parts
  disc: Brake disc
    number HD-1120
    behind caliper`,
  fasteners: `fasteners
  hub-bolt: Hub-to-knuckle bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 N·m, per "HL-114"
    renew`,
  connections: `connections
  brake-hose: Front brake hose
    on caliper, in brake-circuit
    marked hydraulic`,
  circuits: `circuits
  brake-circuit: Front brake circuit
    uses brake-fluid
    bleed at bleed-screw`,
  fluids: `fluids
  axle-oil: Axle oil
    in axle-housing, SAE 75W-90, API GL-5
    fill 1.9 L, until level at fill-plug
    drain at drain-plug
    fill at fill-plug`,
  adjustments: `adjustments
  toe: Front toe
    disturbed by tie-rod
    limit toe-angle`,
  conditions: `conditions
  selector: Gear selector
    park, neutral`,
  limits: `limits
  disc-thickness: Disc thickness
    at least 22.0 mm, new 24.0 mm, per "HL-98"`,
  supplies: `supplies
  flange-sealant: Flange sealant
    sealant
    fit within 10 min, fill after 2 h`,
  temporary: `temporary
  rag: Clean rag in the filler neck
    behind cover`,
  places: `places
  sill-points: Sill lifting points`,
  tools: `tools
  torque-wrench: Torque wrench
    torque 20 to 100 N·m`,
  vehicles: `vehicles
  maristow-300: Maristow 300 delivery van
    years 2018 to 2025
    option axle light, heavy`,
  sources: `sources
  HL-114: Front hub sheet, issue 3`,
  messages: `messages
  brake-dust: Brake dust hurts the lungs. Never blow it off.
    warning`,
  rules: `rules
  chocks-first: Chock the wheels before the vehicle goes up.
    before raise vehicle
    require chock any place`,
  preparation: `preparation
  step: Make the van safe
    set selector park
    chock rear-wheels`,
  removal: `removal
  step: Take the wheel off
    remove wheel-nut, wheel`,
  inspection: `inspection
  step: Look at the disc
    measure disc-thickness`,
  installation: `installation
  step: Fit the wheel
    install wheel, wheel-nut
    torque wheel-nut`,
  completion: `completion
  step: Hand back
    road-test vehicle, 5 km`,
};
