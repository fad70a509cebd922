// H105: signal too weak.
import { defineDiagnostic } from './define.js';
import { messageJob } from './message-example.js';

export const signalTooWeak = defineDiagnostic<{ readonly word: string }>({
  code: 'H105',
  name: 'signal-too-weak',
  severity: 'warning',
  message: (d) => `\`${d.word}\` is too weak for what the text says`,
  advice: () => 'where someone could die, the word is `warning`; where someone will, `danger`',
  why: `CAUTION promises a small injury at most (ANSI Z535.4). A text that speaks of death, electrocution or explosion under that word says two things at once, and the smaller one is believed.`,
  wrong: messageJob('caution: The airbag can kill.', '#   ^^^^^^^ H105'),
  right: messageJob('warning: The airbag can kill.'),
});
