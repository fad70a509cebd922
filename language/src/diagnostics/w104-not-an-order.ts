// W104: not an order.
import { defineDiagnostic } from './define.js';
import { textJob } from './text-example.js';

export const notAnOrder = defineDiagnostic<{ readonly words: string }>({
  code: 'W104',
  name: 'not-an-order',
  severity: 'hint',
  message: (d) => `“${d.words}” does not say who does it`,
  advice: () => 'write it as an order: “Wipe the glass”',
  why: `“The glass should be wiped” may be a wish, a state or a task for someone else. ASD-STE100 rules 3.6 and 5.3: the active voice, in the imperative.`,
  wrong: textJob(
    'clean mirror-glass: The glass should be wiped.',
    '#                                 ^^^^^^^^^^^^^^^ W104',
  ),
  right: textJob('clean mirror-glass: Wipe the glass.'),
});
