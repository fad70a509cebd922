// R101: number twice.
import { defineDiagnostic } from './define.js';
import { libraryFile } from './register-example.js';

export const numberTwice = defineDiagnostic<{ readonly number: string; readonly other: string }>({
  code: 'R101',
  name: 'number-twice',
  severity: 'error',
  message: (d) => `${d.number} is also the number of ${d.other}`,
  why: `The number is what stands on the job card and in \`perform … from\`. With two procedures under one number the shop prints the wrong one some day.`,
  wrong:
    libraryFile('a/mirror.bay', 'A-1') +
    libraryFile('b/mirror-heated.bay', 'A-1').replace('look at\n', 'look at\n#         ^^^ R101\n'),
  right: libraryFile('a/mirror.bay', 'A-1') + libraryFile('b/mirror-heated.bay', 'A-2'),
});
