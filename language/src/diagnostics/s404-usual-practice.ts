// S404: a rule of the starter pack is broken.
import { defineDiagnostic } from './define.js';
import type { RuleWords } from './s403-house-rule.js';

export const usualPractice = defineDiagnostic<RuleWords>({
  code: 'S404',
  name: 'usual-practice',
  severity: 'warning',
  message: (d) => `usual practice \`${d.rule}\`: ${d.title}`,
  advice: (d) => d.missing || undefined,
  why: `Common practice in the trade, on by default; it has no published source and does not stand above local codes, the maker's data or licensed practice. Most of it binds by marks (\`marked restraint\`, \`marked fuel\`), so it asks nothing of things that carry none.

A house that does it another way switches the rule off by name in its settings (\`starterRulesOff\`), with the reason; a house rule that asks the same takes its place.`,
  wrong: `procedure A-7: Underside, clean

places
  rear-wheels: Rear wheels
  underside: Underside

preparation
  step: Raise the vehicle
    warning: A vehicle that falls can kill. Nobody goes under it before the stands carry it.
    raise vehicle
    support vehicle
#   ^^^^^^^^^^^^^^^ S404
    chock rear-wheels

removal
  step: Clean the underside
    clean underside

completion
  step: Hand back
    lower vehicle
    unchock rear-wheels
`,
  right: `procedure A-7: Underside, clean

places
  rear-wheels: Rear wheels
  underside: Underside

preparation
  step: Raise the vehicle
    warning: A vehicle that falls can kill. Nobody goes under it before the stands carry it.
    chock rear-wheels
    raise vehicle
    support vehicle

removal
  step: Clean the underside
    clean underside

completion
  step: Hand back
    lower vehicle
    unchock rear-wheels
`,
});
