// Fixes that `check --fix` makes by itself.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdits, fixShelf } from '../../compiler/src/cli/fix.js';
import type { Shell } from '../../compiler/src/cli/shell.js';
import { fakeShelf } from './fake-library.js';

function fix(files: Record<string, string>) {
  const held = new Map(Object.entries(files));
  const shell = {
    write: (path: string, data: string) => void held.set(path.replace('/shop/lib/', ''), data),
  } as unknown as Shell;
  const fixed = fixShelf(shell, fakeShelf(held));
  return { ...fixed, after: Object.fromEntries(held) };
}

describe('fixing', () => {
  it('makes all that do not touch each other, in one round', () => {
    expect(fix({ 'a.bay': '!error S101 x: here\nkept\n!hint W201 y: here\n', 'b.bay': 'kept' })).toEqual({
      fixes: 2,
      files: ['a.bay'],
      after: { 'a.bay': 'error S101 x: here\nkept\nhint W201 y: here\n', 'b.bay': 'kept' },
    });
  });

  it('goes on while a fix uncovers another', () => {
    const { fixes, after } = fix({ 'a.bay': '!!!error S101 x: here' });
    expect({ fixes, after }).toEqual({ fixes: 3, after: { 'a.bay': 'error S101 x: here' } });
  });

  it('ends where it would go on for ever', () => {
    expect(fix({ 'a.bay': `${'!'.repeat(100)}error S101 x: here` }).fixes).toBe(10);
  });

  it('leaves a clean library alone', () => {
    expect(fix({ 'a.bay': 'clean' })).toEqual({ fixes: 0, files: [], after: { 'a.bay': 'clean' } });
  });
});

describe('edits', () => {
  const at = (start: number, end: number, text: string) => ({ file: 'a', span: { start, end }, text });

  it.each<[string, ReturnType<typeof at>[], string]>([
    ['insert', [at(3, 3, 'X')], 'abcXdef'],
    ['take away', [at(0, 3, '')], 'def'],
    ['several, in any order', [at(0, 1, 'A'), at(5, 6, 'F'), at(2, 4, '')], 'AbeF'],
    ['an insertion before a change at the same place', [at(3, 4, 'D'), at(3, 3, '|')], 'abc|Def'],
  ])('%s', (_, edits, expected) => {
    expect(applyEdits('abcdef', edits)).toBe(expected);
  });

  it('the order in which edits are given makes no difference', () => {
    const edits = fc
      .uniqueArray(fc.nat(9), { minLength: 1 })
      .map((starts) => starts.map((start) => at(start, start + 1, `<${start}>`)));
    fc.assert(
      fc.property(edits, (list) => {
        expect(applyEdits('0123456789', list)).toBe(applyEdits('0123456789', [...list].reverse()));
      }),
    );
  });
});
