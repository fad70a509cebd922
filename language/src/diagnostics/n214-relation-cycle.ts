// Relations that lead from a thing back to itself.
import { defineDiagnostic } from './define.js';

export const relationCycle = defineDiagnostic<{
  readonly name: string;
  /** `mirror held by bolt`, one after the other. */
  readonly way: readonly string[];
  readonly word: 'off' | 'in' | 'on';
}>({
  code: 'N214',
  name: 'relation-cycle',
  severity: 'error',
  message: ({ name, way, word }) =>
    word === 'off'
      ? `\`${name}\` can never come off: ${way.join(', ')}`
      : `\`${name}\` is ${word} itself: ${way.join(', ')}`,
  advice: () => 'one of these relations is not so, or holds on other vehicles: look at each',
  why: `What holds, clamps or hides a thing comes off before it. Relations that lead in a ring give no first thing to take off, so no order of work satisfies them and every line that removes one of these things looks wrong. The same goes for things that are in, or on, each other. Only relations that can hold together on one vehicle are looked at.`,
  wrong: `catalogue: Mirror

sources
  BD-1: Body sheet

parts
  mirror: Mirror
    held by mirror-bolt
#           ^^^^^^^^^^^ N214

fasteners
  mirror-bolt: Mirror bolts
    3 of M6x1.0, class 8.8, hex 10 mm
    behind mirror
    torque 8 N·m, per "BD-1"
`,
  right: `catalogue: Mirror

sources
  BD-1: Body sheet

parts
  mirror-cover: Mirror cover
  mirror: Mirror
    held by mirror-bolt

fasteners
  mirror-bolt: Mirror bolts
    3 of M6x1.0, class 8.8, hex 10 mm
    behind mirror-cover
    torque 8 N·m, per "BD-1"
`,
});
