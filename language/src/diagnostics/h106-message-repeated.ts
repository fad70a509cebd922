// H106: message repeated.
import { defineDiagnostic } from './define.js';
import { messageJob } from './message-example.js';

export const messageRepeated = defineDiagnostic<{ readonly word: string }>({
  code: 'H106',
  name: 'message-repeated',
  severity: 'hint',
  message: (d) => `this \`${d.word}\` was already given`,
  advice: () => 'once for each job and hazard, at the first action it is about',
  why: `A message that comes back at every step is skipped at every step, and with it the one that is new.`,
  wrong: messageJob(
    'caution: The glass breaks easily.',
    'caution: The glass breaks easily.',
    '#   ^^^^^^^ H106',
  ),
  right: messageJob('caution: The glass breaks easily.'),
});
