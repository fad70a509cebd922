// R203: declared alike.
import { defineDiagnostic } from './define.js';

export const declaredAlike = defineDiagnostic<{
  readonly name: string;
  readonly other: string;
  /** The file of the other. */
  readonly file: string;
  readonly what: string;
}>({
  code: 'R203',
  name: 'declared-alike',
  severity: 'hint',
  message: (d) => `\`${d.name}\` and \`${d.other}\` in ${d.file} have the same ${d.what}`,
  advice: () => 'one entry in a catalogue that both use keeps them the same',
  why: `The same thing written down twice gets two numbers, two prices and two torques as soon as one of them is changed.`,
  wrong: `--- file: a.bay
catalogue: Mirrors

parts
  door-mirror: Door mirror
    number "DM-114"
--- file: b.bay
catalogue: Mirrors, heated

parts
  heated-mirror: Heated mirror
# ^^^^^^^^^^^^^ R203
    number "DM-114"
`,
  right: `--- file: a.bay
catalogue: Mirrors

parts
  door-mirror: Door mirror
    number "DM-114"
--- file: b.bay
catalogue: Mirrors, heated

parts
  heated-mirror: Heated mirror
    number "DM-115"
`,
});
