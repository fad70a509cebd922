// S403: a house rule is broken.
import { defineDiagnostic } from './define.js';

export interface RuleWords {
  readonly rule: string;
  readonly title: string;
  /** What is missing, in the rule's own words. */
  readonly missing: string;
}

export const houseRule = defineDiagnostic<RuleWords>({
  code: 'S403',
  name: 'house-rule',
  severity: 'error',
  message: (d) => `house rule \`${d.rule}\` is broken: ${d.title}`,
  advice: (d) => d.missing || undefined,
  why: 'The house wrote this rule because the job went wrong without it. It holds on every path and every vehicle the procedure applies to.',
  wrong: ``,
  right: ``,
});
