// H104: grave word for damage.
import { defineDiagnostic } from './define.js';
import { messageJob } from './message-example.js';

export const graveWordForDamage = defineDiagnostic<{ readonly word: string }>({
  code: 'H104',
  name: 'grave-word-for-damage',
  severity: 'hint',
  message: (d) => `this \`${d.word}\` speaks of damage alone`,
  advice: () => '`notice` is the word for damage; if someone may be hurt, say so in the text',
  why: `DANGER and WARNING are kept for death and grave injury and never used for property alone (ANSI Z535.4).`,
  wrong: messageJob('warning: The clips scratch the paint.', '#   ^^^^^^^ H104'),
  right: messageJob('notice: The clips scratch the paint.'),
});
