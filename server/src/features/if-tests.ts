// What `if` asks, with the row of the server's texts that says it.
import type { IfTest } from '@baywright/language';
import type { Texts } from '../texts/index.js';

export const IF_TESTS = {
  below: 'belowLimit',
  above: 'aboveLimit',
  outside: 'outsideLimit',
  within: 'withinLimit',
  rejected: 'isRejected',
  needed: 'isNeeded',
} as const satisfies Record<IfTest, keyof Texts>;
