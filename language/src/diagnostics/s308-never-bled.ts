// S308: never bled.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverBled = defineDiagnostic<StateWords>({
  code: 'S308',
  name: 'never-bled',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} opened here and never ${d.wanted}`,
  why: 'Opening a line lets air in. Air is soft where fluid is hard: the pedal goes to the floor, the clutch does not part, the ram sinks. A circuit that was opened is bled before anyone relies on it.',
  wrong: `procedure A-10: Clutch hose, refit

circuits
  clutch-circuit: Clutch circuit
    uses clutch-fluid
    bleed at bleed-screw

fluids
  clutch-fluid: Clutch fluid
    DOT 4
    fill 0.2 L, until level at max-mark, per "S-4"

connections
  clutch-hose: Clutch hose
    in clutch-circuit

fasteners
  bleed-screw: Bleed screw
    1 of M8x1.25, hex 10 mm
    torque 8 N·m, per "S-4"

places
  max-mark: MAX mark of the reservoir
  clutch-pedal: Clutch pedal

sources
  S-4: Clutch sheet, issue 1

removal
  step: Open the hose
    warning: Brake fluid hurts eyes and skin. Wear goggles and gloves.
    disconnect clutch-hose
#   ^^^^^^^^^^^^^^^^^^^^^^ S308

installation
  step: Join and bleed
    connect clutch-hose
    fill clutch-fluid, 0.2 L, until level at max-mark
    top-up clutch-fluid until level at max-mark
    pump clutch-pedal
`,
  right: `procedure A-10: Clutch hose, refit

circuits
  clutch-circuit: Clutch circuit
    uses clutch-fluid
    bleed at bleed-screw

fluids
  clutch-fluid: Clutch fluid
    DOT 4
    fill 0.2 L, until level at max-mark, per "S-4"

connections
  clutch-hose: Clutch hose
    in clutch-circuit

fasteners
  bleed-screw: Bleed screw
    1 of M8x1.25, hex 10 mm
    torque 8 N·m, per "S-4"

places
  max-mark: MAX mark of the reservoir
  clutch-pedal: Clutch pedal

sources
  S-4: Clutch sheet, issue 1

removal
  step: Open the hose
    warning: Brake fluid hurts eyes and skin. Wear goggles and gloves.
    disconnect clutch-hose

installation
  step: Join and bleed
    connect clutch-hose
    fill clutch-fluid, 0.2 L, until level at max-mark
    bleed clutch-circuit at bleed-screw
    torque bleed-screw
    top-up clutch-fluid until level at max-mark
    pump clutch-pedal
`,
});
