// R202: rule binds nothing.
import { defineDiagnostic } from './define.js';

export const ruleBindsNothing = defineDiagnostic<{ readonly rule: string; readonly what: string }>({
  code: 'R202',
  name: 'rule-binds-nothing',
  severity: 'warning',
  tag: 'unused',
  message: (d) => `rule \`${d.rule}\` binds to nothing: ${d.what}`,
  why: `A rule that binds by a name or mark that nothing carries is never broken, and the shop believes that it is kept. Mostly the mark was renamed or misspelt.`,
  wrong: `--- file: catalogue/mirrors.bay
catalogue: Mirrors

places
  mirror-glass: Mirror glass

rules
  glass-clean: Glass is clean before it is looked at.
    before inspect any part marked pane
#                                  ^^^^ R202
    require clean mirror-glass
--- file: procedures/a.bay
procedure A-1: Mirror, look at

use "../catalogue/mirrors.bay"

inspection
  step: Look at the mirror
    clean mirror-glass
`,
  right: `--- file: catalogue/mirrors.bay
catalogue: Mirrors

places
  mirror-glass: Mirror glass

rules
  glass-clean: Glass is clean before it is looked at.
    before inspect mirror-glass
    require clean mirror-glass
--- file: procedures/a.bay
procedure A-1: Mirror, look at

use "../catalogue/mirrors.bay"

inspection
  step: Look at the mirror
    clean mirror-glass
`,
});
