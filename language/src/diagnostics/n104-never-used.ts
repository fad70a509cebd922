// An entry that nothing in its procedure names.
import { defineDiagnostic } from './define.js';

export const neverUsed = defineDiagnostic<{ readonly name: string }>({
  code: 'N104',
  name: 'never-used',
  severity: 'hint',
  message: ({ name }) => `\`${name}\` is declared and never used`,
  why: `An entry that no step and no other entry names is left over from an earlier revision, or the step that uses it was forgotten.`,
  wrong: `procedure A-1: Bore, look at

places
  bore: Bore
  face: Sealing face
# ^^^^ N104

inspection
  step: Look at the bore
    clean bore
`,
  right: `procedure A-1: Bore, look at

places
  bore: Bore
  face: Sealing face

inspection
  step: Look at the bore
    clean bore, face
`,
  tag: 'unused',
});
