// H103: caution of damage.
import { defineDiagnostic } from './define.js';
import { messageJob } from './message-example.js';

export const cautionOfDamage = defineDiagnostic<{ readonly word: string }>({
  code: 'H103',
  name: 'caution-of-damage',
  severity: 'hint',
  message: (d) => `this \`${d.word}\` speaks of damage alone`,
  advice: () => '`notice` is the word for damage',
  why: `CAUTION means that someone may be hurt (ANSI Z535.4, ISO 3864-2). Spent on scratched paint, it is no longer believed where it stands for a hand. Military manuals use CAUTION for equipment; a house that follows them switches this off.`,
  wrong: messageJob('caution: The clips scratch the paint.', '#   ^^^^^^^ H103'),
  right: messageJob('notice: The clips scratch the paint.'),
});
