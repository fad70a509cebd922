// A word in a house rule that is no verb or no kind.
import { defineDiagnostic } from './define.js';
import { didYouMean } from './did-you-mean.js';

export const ruleWord = defineDiagnostic<{
  readonly word: string;
  readonly what: 'verb' | 'kind';
  readonly near: readonly string[];
}>({
  code: 'N310',
  name: 'rule-word',
  severity: 'error',
  message: ({ word, what }) =>
    what === 'verb'
      ? `no step can say \`${word}\`, so the rule never binds`
      : `\`${word}\` is no kind of thing`,
  advice: ({ near }) => didYouMean(near),
  why: `A rule looks for verbs and kinds of thing by their words. One that is no such word waits for something that never comes, and everybody believes that the rule is kept.`,
  wrong: `catalogue: House

rules
  pins-again: Pins are looked at again.
    after refit any fastener marked critical
#         ^^^^^ N310
    require hold
`,
  right: `catalogue: House

rules
  pins-again: Pins are looked at again.
    after install any fastener marked critical
    require hold
`,
});
