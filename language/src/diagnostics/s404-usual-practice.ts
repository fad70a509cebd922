// S404: a rule of the starter pack is broken.
import { defineDiagnostic } from './define.js';
import type { RuleWords } from './s403-house-rule.js';

export const usualPractice = defineDiagnostic<RuleWords>({
  code: 'S404',
  name: 'usual-practice',
  severity: 'warning',
  message: (d) => `usual practice \`${d.rule}\`: ${d.title}`,
  advice: (d) => d.missing || undefined,
  why: 'Common practice in the trade, on by default. A house that does it another way switches the rule off by name in its settings, with the reason.',
  wrong: `procedure A-7: Underside, clean

places
  rear-wheels: Rear wheels
  underside: Underside

preparation
  step: Raise the vehicle
    warning: A vehicle that falls can kill. Nobody goes under it before the stands carry it.
    raise vehicle
#   ^^^^^^^^^^^^^ S404
    support vehicle
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
