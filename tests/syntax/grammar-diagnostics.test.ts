// Every diagnostic of grammar and layout: its wrong example has that finding and no other, its right one none, and
// what fixes it has mend it.
import { describe, expect, test } from 'vitest';
import { GRAMMAR_DIAGNOSTICS } from '../../language/src/diagnostics/grammar.js';
import { parse } from '../../language/src/syntax/index.js';
import { checkMarked, withoutMarks } from '../suite-helper.js';
import { applyFix, findingsOf } from './read.js';

describe.each(GRAMMAR_DIAGNOSTICS.map((def) => [def.code, def] as const))('%s', (code, def) => {
  test('its wrong example is reported where it is marked', () => {
    checkMarked(def.wrong, findingsOf);
    expect(def.wrong).toContain(code);
  });

  test('its right example has no finding', () => {
    expect(parse(def.right, 'right.bay').findings).toEqual([]);
  });

  test('a preferred fix leaves no finding', () => {
    const text = withoutMarks(def.wrong);
    for (const finding of parse(text, 'wrong.bay').findings) {
      for (const fix of finding.fixes.filter(({ preferred }) => preferred)) {
        expect(parse(applyFix(text, fix), 'fixed.bay').findings).toEqual([]);
      }
    }
  });
});
