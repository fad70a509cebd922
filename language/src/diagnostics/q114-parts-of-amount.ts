// Numbers that do not make one amount.
import { defineDiagnostic } from './define.js';

const PROBLEMS = {
  'cannot-follow': 'these units do not go together',
  'not-falling': 'the larger unit comes first',
  'not-whole': 'only the last part may have decimals',
} as const;

export const partsOfAmount = defineDiagnostic<{
  readonly written: string;
  readonly problem: 'cannot-follow' | 'not-falling' | 'not-whole';
}>({
  code: 'Q114',
  name: 'parts-of-amount',
  severity: 'error',
  message: ({ written, problem }) => `${written} is not one amount: ${PROBLEMS[problem]}`,
  why: `Only times, feet and inches, pounds and ounces and the like are written in parts, the larger unit first. Two quantities that stand side by side are two clauses, with a comma between them.`,
  wrong: `procedure A-1: Cover, look at

labour 40 min 1 h
#      ^^^^^^^^^^ Q114
`,
  right: `procedure A-1: Cover, look at

labour 1 h 40 min
`,
});
