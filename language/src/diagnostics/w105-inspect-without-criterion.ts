// W105: inspect without criterion.
import { defineDiagnostic } from './define.js';
import { textJob } from './text-example.js';

export const inspectWithoutCriterion = defineDiagnostic<{ readonly name: string }>({
  code: 'W105',
  name: 'inspect-without-criterion',
  severity: 'hint',
  message: (d) => `what makes \`${d.name}\` unfit?`,
  advice: () => 'write below it what to look for: `reject: cracks, scoring, rust pits`',
  why: `“Inspect the bore” is ticked by everyone and tells nobody what to see. A list of what makes the thing unfit is read in a second.`,
  wrong: textJob('inspect mirror-glass', '#           ^^^^^^^^^^^^ W105'),
  right: textJob('inspect mirror-glass', '  reject: cracks', '  if rejected', '    stop: Order a new glass.'),
});
