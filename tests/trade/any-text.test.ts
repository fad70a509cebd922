// Any text at all gives an answer: no reader of this folder throws or hangs.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  dtcCheck,
  GRADE_STANDARDS,
  hexalobularSuspicious,
  readClass,
  readFastener,
  readGrade,
  readOrder,
  readThread,
  vinCheck,
} from '../../language/src/trade/index.js';
import { thr } from './support.js';

const text = fc.oneof(
  fc.string({ maxLength: 40 }),
  fc.string({ unit: fc.constantFrom(...'M0123456789x×.,/-# UNCFNPTGRWDOTa".\n'), maxLength: 30 }),
  fc.constantFrom(' '.repeat(5000), '1-'.repeat(3000), '9'.repeat(4000), 'M'.repeat(3000)),
);

it('readers answer', () => {
  fc.assert(
    fc.property(text, fc.constantFrom(...GRADE_STANDARDS), (any, standard) => {
      expect(readThread(any)).toBeTypeOf('object');
      expect(readClass(any)).toBeTypeOf('object');
      expect(readFastener(any)).toBeTypeOf('object');
      expect(readGrade(standard, any).printed).toBeTypeOf('string');
      expect(readOrder(any)).toBeTypeOf('object');
      expect(vinCheck(any).ok).toBeTypeOf('boolean');
      expect(dtcCheck(any).ok).toBeTypeOf('boolean');
      hexalobularSuspicious(thr('M8'), any);
    }),
  );
});
