// A torque that holds with something on the threads, which no line puts there.
import { defineDiagnostic } from './define.js';

const job = (line: string) => `procedure A-1: Union nut, tighten

sources
  S-1: Exhaust sheet, issue 1

fasteners
  union-nut: Union nut
    1 of M14x1.5, hex 17 mm
    torque 30 N·m, lubricant anti-seize, per "S-1"

supplies
  anti-seize: Anti-seize paste
    grease

removal
  step: Take the nut off
    remove union-nut

installation
  step: Fit the nut
${line}    install union-nut
    torque union-nut
`;

export const threadsLeftBare = defineDiagnostic<{
  readonly name: string;
  readonly supply: string;
}>({
  code: 'F215',
  name: 'threads-left-bare',
  severity: 'warning',
  message: ({ name, supply }) =>
    `the torque of \`${name}\` holds with \`${supply}\` on the threads, and no line puts it there`,
  advice: ({ name, supply }) => `write \`apply ${supply} to ${name}\` before it goes in`,
  why: `The same torque clamps less when the threads are bare: with anti-seize left out, two fifths of the clamp force are missing (T = K·d·F, Shigley eq. 8-27), and a threadlocker that is left out lets the bolt work loose. Where the bolt comes coated, do not name a supply.`,
  wrong: `${job('')}#          ^^^^^^^^^ F215
`,
  right: job('    apply anti-seize to union-nut\n'),
});
