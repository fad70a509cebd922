// L403: a part that is renewed has no number, and the house asks for one.
import { defineDiagnostic } from './define.js';

const SETTINGS = '--- file: baywright.json\n{ "release": { "partNumbers": true } }\n';

export const partNumberMissing = defineDiagnostic<{ readonly name: string }>({
  code: 'L403',
  name: 'part-number-missing',
  severity: 'question',
  message: (d) => `what is the part number of \`${d.name}\`? A new one is fitted`,
  advice: () => 'write `number "…"`, or `number ?` while it is not known',
  why: `The pull sheet lists what to fetch from the store. Without a number someone has to look it up with the vehicle already on the lift. The house asks for it by the setting \`release.partNumbers\`.`,
  wrong: `${SETTINGS}--- file: mirror.bay\ncatalogue: Mirrors\n\nparts\n  door-mirror: Door mirror\n# ^^^^^^^^^^^ L403\n    renew\n`,
  right: `${SETTINGS}--- file: mirror.bay\ncatalogue: Mirrors\n\nparts\n  door-mirror: Door mirror\n    number "DM-114"\n    renew\n`,
});
