// G115: nested too deep.
import { defineDiagnostic } from './define.js';
import { libraryFile } from './register-example.js';

/** Branches inside branches to this level are followed. Nobody in a bay follows five. */
export const DEEPEST = 32;

const nested = (levels: number, marked: string): string => {
  const ifs = Array.from({ length: levels }, (_, i) => `${'  '.repeat(i + 2)}if needed: It still sticks.`);
  const lines = [...ifs, `${'  '.repeat(levels + 2)}clean mirror-glass`];
  if (marked !== '') lines.splice(DEEPEST, 0, marked);
  return libraryFile('a.bay', 'A-1').replace('    clean mirror-glass', lines.join('\n'));
};

export const nestedTooDeep = defineDiagnostic<{ readonly most: number }>({
  code: 'G115',
  name: 'nested-too-deep',
  severity: 'error',
  message: ({ most }) => `this line stands more than ${most} levels deep, and no work is followed that far`,
  advice: () => 'make an operation of what stands deepest and perform it',
  why: `Nobody keeps count of branches within branches with a wrench in the hand, and every level doubles the ways through the job. The work of a file that goes deeper is not looked at for what is off and what comes back.`,
  wrong: nested(DEEPEST, `# ${' '.repeat(DEEPEST * 2)}${'^'.repeat('if needed'.length)} G115`),
  right: nested(2, ''),
});
