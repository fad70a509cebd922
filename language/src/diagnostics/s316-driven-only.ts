// S316: pressed in or out, and never said to be on or off.
import { defineDiagnostic } from './define.js';

const job = (out: string, back: string) => `procedure A-1: Roller seal, replace

parts
  roller: Roller
    held by roller-clip
  seal: Roller seal
    in roller
    renew

fasteners
  roller-clip: Roller clips
    2 of clip

removal
  step: Take the seal out
    remove roller-clip, roller
    press seal from roller
${out}
installation
  step: Fit the new seal
    press seal into roller
${back}    install roller, roller-clip
`;

export const drivenOnly = defineDiagnostic<{
  readonly name: string;
  /** The line as it is written, and what goes below it. */
  readonly verb: string;
  readonly other: string;
  readonly isOut: boolean;
}>({
  code: 'S316',
  name: 'driven-only',
  severity: 'warning',
  message: (d) =>
    d.isOut
      ? `no line says that \`${d.name}\` is off; \`${d.verb}\` says how it comes out`
      : `no line says that \`${d.name}\` is on; \`${d.verb}\` says how it goes in`,
  advice: (d) => `write \`${d.other} ${d.name}\` below it`,
  why: 'Pressing, pulling, prying and tapping say how a part is moved, and may be done to a part that stays where it is. What is off and on is said with `remove` and `install`. Without them nobody notices that the part is left out, its order is not followed, and a part that goes on new is not on the list for the parts counter.',
  wrong: job('#   ^^^^^^^^^^ S316\n', ''),
  right: job('    remove seal\n', '    install seal\n'),
});
