// The words of house rules: what opens a rule, what it asks for, how it picks out the acts it looks at.

export interface RuleWordDef {
  readonly word: string;
  /** `head` opens a rule, `tail` says what it asks, `pattern` picks out acts and things. */
  readonly part: 'head' | 'tail' | 'pattern';
  readonly docs: string;
  /** Lines of a rule, below its name, that use the word. */
  readonly example: readonly string[];
}

const word = (
  part: RuleWordDef['part'],
  text: string,
  docs: string,
  ...example: readonly string[]
): RuleWordDef => ({ word: text, part, docs, example });

export const RULE_WORDS: readonly RuleWordDef[] = [
  word(
    'head',
    'after',
    'When this has been done, something is owed: before the job ends, or before what a `before` line names.',
    'after push-back caliper-piston',
    'require pump brake-pedal',
    'before road-test vehicle',
  ),
  word(
    'head',
    'before',
    'Something must have been done before this act. Below `after`, it names the end of the time allowed.',
    'before raise vehicle',
    'require chock any place',
  ),
  word(
    'head',
    'never',
    'This act may not happen while a state holds.',
    'never remove any part',
    'while vehicle raised',
  ),
  word(
    'head',
    'every',
    'Each of these acts must have a clause, or may happen only once.',
    'every remove any part over 25 kg',
    'needs with hoist',
  ),
  word(
    'tail',
    'require',
    'What is asked for: an act, `wait` with a time, `hold` for a second person, or a signal word before the act.',
    'after torque any fastener marked critical',
    'require hold',
  ),
  word(
    'tail',
    'since',
    'What is asked for must have been done after this act.',
    'before disconnect any connection marked restraint',
    'require wait 10 min',
    'since disconnect battery-negative',
  ),
  word('tail', 'while', 'The state of a ban.', 'never run engine', 'while any temporary placed'),
  word(
    'tail',
    'needs',
    'The clause that each act must have.',
    'every torque any fastener marked critical',
    'needs with torque-wrench',
  ),
  word(
    'tail',
    'at most once',
    'The act may happen once to one thing.',
    'every torque any fastener marked stretch',
    'at most once',
  ),
  word(
    'tail',
    'next',
    'With `before`: by the very next action.',
    'after disconnect any connection marked hydraulic',
    'require cap it',
    'before next',
  ),
  word(
    'tail',
    'step ends',
    'With `before`: within the same step.',
    'after torque any fastener marked critical',
    'require mark it',
    'before step ends',
  ),
  word(
    'pattern',
    'any',
    'Every thing of a kind, instead of one by its name.',
    'before remove any part',
    'require warning',
  ),
  word(
    'pattern',
    'marked',
    'Only those that their entry marks with this word.',
    'after install any part marked wheel',
    'require recheck any fastener',
  ),
  word(
    'pattern',
    'over',
    'Only those with more mass than this.',
    'every remove any part over 25 kg',
    'needs with hoist',
  ),
  word(
    'pattern',
    'it',
    'The thing of the act that the rule looked at.',
    'after remove any fastener marked self-locking',
    'require renew it',
  ),
  word(
    'pattern',
    'or',
    'Either of two verbs or names.',
    'never remove or loosen wheel-nut',
    'while vehicle raised',
  ),
  word(
    'pattern',
    'not',
    'The opposite of a state.',
    'never disconnect battery-positive',
    'while battery-negative not disconnected',
  ),
];
