// F214: a crowfoot on a wrench of unknown length.
import { defineDiagnostic } from './define.js';

const tools = (length: string) => `procedure A-1: Pipe nut, tighten

fasteners
  pipe-nut: Pipe nut
    1 of M12x1.5, hex 18 mm
    torque 60 N·m, per "HL-1"

tools
  crowfoot: Crowfoot, 18 mm
    offset 38 mm
  torque-wrench: Torque wrench
    torque 20 to 100 N·m
${length}
sources
  HL-1: Pipe sheet

installation
  step: Tighten the nut
    torque pipe-nut with torque-wrench, crowfoot
`;

export const adapterSettingUnknown = defineDiagnostic<{
  readonly adapter: string;
  readonly wrench: string | undefined;
}>({
  code: 'F214',
  name: 'adapter-setting-unknown',
  severity: 'question',
  message: ({ adapter, wrench }) =>
    wrench === undefined
      ? `with \`${adapter}\` less is set on the wrench, but no wrench is named`
      : `with \`${adapter}\` less is set on the wrench, but the length of \`${wrench}\` is not known`,
  advice: ({ wrench }) =>
    wrench === undefined
      ? 'name the wrench on the line'
      : `write \`length\` in the entry of \`${wrench}\`: from the drive to the middle of the grip`,
  why: `A crowfoot or handle extension makes the wrench longer, so the bolt gets more than the wrench shows: with 38 mm on a 400 mm wrench almost a tenth more. What is set is T·L/(L + E), with L from the drive to the middle of the grip and E from the drive to the bolt (NAVEDTRA 14315), and it stands in the hover once both are known.`,
  wrong: `${tools('')}#                                       ^^^^^^^^ F214
`,
  right: tools('    length 400 mm\n'),
});
