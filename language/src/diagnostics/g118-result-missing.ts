// An `if` that asks for a result which nothing gives.
import { defineDiagnostic } from './define.js';
import { readingJob } from './reading-example.js';

export const resultMissing = defineDiagnostic<{ readonly asked: string; readonly name?: string }>({
  code: 'G118',
  name: 'result-missing',
  severity: 'error',
  message: ({ asked, name }) =>
    name === undefined
      ? `\`${asked}\` asks for a result, and the line above gives none`
      : `\`${asked}\` asks for a result of \`${name}\`, and nothing measures it before`,
  advice: ({ name }) =>
    name === undefined
      ? 'put it right behind or below the `measure`, `inspect` or `check-level` it asks about, or name what it asks about: `if disc-thickness below limit`'
      : 'measure or inspect it first, or write another name',
  why: `A branch that hangs on nothing is taken by guess: the technician looks for a reading that was never asked for. Often a line has come between the measuring and its \`if\`.`,
  wrong: readingJob(
    'measure gap',
    'wait 5 min',
    'if above limit',
    '#   ^^^^^^^^^^^^^^ G118',
    '  note: Order a new mirror.',
  ),
  right: readingJob('wait 5 min', 'measure gap', '  if above limit', '    note: Order a new mirror.'),
});
