// S315: left tied.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const leftTied = defineDiagnostic<StateWords>({
  code: 'S315',
  name: 'left-tied',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} tied here and never untied`,
  why: 'A strap that stays on holds a line or part where it does not belong: it chafes, pulls a plug out, or locks what must move.',
  wrong: `procedure A-6: Strut, look over

connections
  sensor-lead: Sensor lead

places
  strut-tower: Strut tower

tools
  strap: Soft strap

removal
  step: Clear the strut
    disconnect sensor-lead
    tie sensor-lead to strut-tower with strap
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S315

installation
  step: Close up
    connect sensor-lead
`,
  right: `procedure A-6: Strut, look over

connections
  sensor-lead: Sensor lead

places
  strut-tower: Strut tower

tools
  strap: Soft strap

removal
  step: Clear the strut
    disconnect sensor-lead
    tie sensor-lead to strut-tower with strap

installation
  step: Close up
    untie sensor-lead
    connect sensor-lead
`,
});
