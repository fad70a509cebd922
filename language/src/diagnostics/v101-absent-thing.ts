// V101: absent thing.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const absentThing = defineDiagnostic<StateWords>({
  code: 'V101',
  name: 'absent-thing',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not on every vehicle this line is for`,
  why: `On a vehicle that does not have it the line makes no sense: the technician looks for a part that was never fitted, and begins to doubt the rest. Guard the line with the same \`when\` as the entry's \`only when\`.`,
  wrong: `procedure A-14: Level sensor, refit

applies to van

vehicles
  van: Delivery van
    option axle light, heavy

connections
  sensor-lead: Level sensor lead
    only when axle heavy

removal
  step: Open the lead
    disconnect sensor-lead
#              ^^^^^^^^^^^ V101

installation
  step: Join the lead
    connect sensor-lead, when axle heavy
`,
  right: `procedure A-14: Level sensor, refit

applies to van

vehicles
  van: Delivery van
    option axle light, heavy

connections
  sensor-lead: Level sensor lead
    only when axle heavy

removal
  step: Open the lead
    disconnect sensor-lead, when axle heavy

installation
  step: Join the lead
    connect sensor-lead, when axle heavy
`,
});
