// A thing in a clause that does not take its kind.
import { defineDiagnostic } from './define.js';

export const wrongKindInClause = defineDiagnostic<{
  readonly name: string;
  readonly kind: string;
  readonly clause: string;
  readonly takes: string;
}>({
  code: 'N202',
  name: 'wrong-kind-in-clause',
  severity: 'error',
  message: ({ name, kind, clause, takes }) => `\`${name}\` is ${kind}; \`${clause}\` names ${takes}`,
  why: `What stands in a clause decides what is checked: the faces that must be clean, the tool that must be listed, the bolts that hold a part.`,
  wrong: `procedure A-1: Bore, look at

places
  bore: Bore
  face: Sealing face

inspection
  step: Look at the bore
    clean bore with face
#                   ^^^^ N202
`,
  right: `procedure A-1: Bore, look at

places
  bore: Bore
  face: Sealing face

tools
  brush: Brush

inspection
  step: Look at the bore
    clean bore with brush
    clean face
`,
});
