// The marks that usual practice looks for. A thing that carries one gets the rules that go with it; without marks the
// starter pack asks for little more than chocks and stands.

export const STARTER_MARKS: Readonly<Record<string, string>> = {
  wheel: 'A road wheel: lowering asks for its nuts, and they are checked again after the first distance.',
  brake: 'A brake circuit: the pedal is tried after bleeding.',
  'brake-caliper':
    'A caliper or its piston: pedal and reservoir after pushing back, nothing moves while it is off.',
  'brake-pedal': 'The pedal: nobody presses it with a caliper off.',
  selector: 'The gear or parking selector: it stays with a caliper off.',
  ignition: 'The ignition, with the value `on`: off before restraint connectors.',
  restraint: 'Airbag and belt tensioner connectors: battery off, then a wait.',
  'battery-negative': 'The negative battery lead: off first, on last.',
  'battery-positive': 'The positive battery lead: off last, on first.',
  'engine-wiring': 'Engine wiring: opened with the battery off.',
  fuel: 'A fuel line under pressure: let off first, leaks looked for afterwards.',
  'air-conditioning':
    'A refrigerant line, or the refrigerant: recovered before opening, evacuated before charging.',
  'pressure-line': 'A line under pressure: let off before it is opened.',
  hydraulic: 'A hydraulic line: capped when open.',
  'keep-clean': 'A line that dirt must not fall into: cleaned around before it is opened.',
  'high-voltage': 'A power-side connector: low-voltage battery off, wait, proved dead.',
  'service-plug': 'The plug that parts the power side.',
  'lock-out':
    'What keeps the power from coming back, or the plug itself: placed, locked, tagged or stored before a power-side connector is opened.',
  'loaded-spring':
    'A fastener that holds a loaded spring, or a part with one inside: the spring is compressed first.',
  'caging-bolt':
    'What cages a power spring: let go and taken out only with the air lines joined and the brake released.',
  'spring-brake':
    'The spring brake, with the value `applied`: air holds its springs back only while it is released.',
  'in-phase':
    'A belt, chain, gear or jointed shaft that must go back as it sat: marked or locked before it comes off.',
  'pressure-cap': 'A cap over hot fluid under pressure: opened cold.',
  'engine-heat': 'The engine temperature, with the value `hot`.',
  'open-gears':
    'A cover over gears or shafts: a look inside before it closes, nothing turns while it is off.',
  'in-opening': 'A rag, plug or cover that closes an opening of the engine for the job.',
  sensor: 'A sensor connector: the fault memory is read once it is joined again.',
};
