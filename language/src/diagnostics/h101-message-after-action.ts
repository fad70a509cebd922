// H101: a message that comes after what it warns of.
import { defineDiagnostic } from './define.js';
import { messageJob } from './message-example.js';

export const messageAfterAction = defineDiagnostic<{ readonly signal: string; readonly below: boolean }>({
  code: 'H101',
  name: 'message-after-action',
  severity: 'warning',
  message: (d) =>
    d.below
      ? `\`${d.signal}\` stands below the action it protects`
      : `\`${d.signal}\` comes after the last action of its step`,
  advice: () => 'move it before the action: who reads it afterwards is already hurt',
  why: `A technician reads a line, does it, and reads the next. A message belongs before the action it is about, where it is read in time (ANSI Z535.6 on embedded messages; IEC/IEEE 82079-1). Between two actions of a step is fine.`,
  wrong: messageJob('caution: The glass breaks easily.').replace(
    '    caution: The glass breaks easily.\n    remove mirror-clip, mirror\n',
    '    remove mirror-clip, mirror\n    caution: The glass breaks easily.\n#   ^^^^^^^ H101\n',
  ),
  right: messageJob('caution: The glass breaks easily.'),
});
