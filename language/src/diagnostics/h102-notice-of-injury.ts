// H102: notice of injury.
import { defineDiagnostic } from './define.js';
import { messageJob } from './message-example.js';

export const noticeOfInjury = defineDiagnostic<{ readonly word: string }>({
  code: 'H102',
  name: 'notice-of-injury',
  severity: 'error',
  message: (d) => `a \`${d.word}\` is for damage, and this one speaks of injury`,
  advice: () => '`caution` for a small injury, `warning` where it could be grave, `danger` where it will be',
  why: `A NOTICE carries no alert symbol and is about things, never about people (ANSI Z535.4, Z535.6). Who learned that skips it at the wrong time.`,
  wrong: messageJob('notice: Splinters injure the eyes.', '#   ^^^^^^ H102'),
  right: messageJob('caution: Splinters injure the eyes.'),
});
