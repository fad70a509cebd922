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
  wrong: ``,
  right: ``,
});
