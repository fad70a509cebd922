// The diagnostics of the wording review.
import { vagueWords } from './w101-vague-words.js';
import { longSentence } from './w102-long-sentence.js';
import { twoInstructions } from './w103-two-instructions.js';
import { notAnOrder } from './w104-not-an-order.js';
import { inspectWithoutCriterion } from './w105-inspect-without-criterion.js';
import { rejectWithoutConsequence } from './w106-reject-without-consequence.js';
import { marketSide } from './w107-market-side.js';
import { mixedTerms } from './w108-mixed-terms.js';
import { namedInProseOnly } from './w109-named-in-prose-only.js';

export const WORDING_DIAGNOSTICS = [
  vagueWords,
  longSentence,
  twoInstructions,
  notAnOrder,
  inspectWithoutCriterion,
  rejectWithoutConsequence,
  marketSide,
  mixedTerms,
  namedInProseOnly,
] as const;
