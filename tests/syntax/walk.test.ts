// Asking a tree what stands at a place.
import { describe, expect, test } from 'vitest';
import { lineAt, parse, pathAt } from '../../language/src/syntax/index.js';
import { namesOf } from '../../language/src/syntax/walk.js';
import { touches } from '../../language/src/text/span.js';

/** The tree of a text, and the offset of the `$0` in it. */
function at(marked: string) {
  const offset = marked.indexOf('$0');
  return { tree: parse(marked.replace('$0', ''), 'a.bay').tree, offset };
}

describe('the line at a place', () => {
  test('is the innermost whose code or text holds it', () => {
    const { tree, offset } = at(
      'procedure A-1: T\n\nremoval\n  step: S\n    remove ca$0p with bar\n    wait 1 h',
    );
    expect(pathAt(tree, offset).map(({ kind }) => kind)).toEqual(['section', 'step', 'statement']);
    expect(lineAt(tree, offset)?.head.text).toBe('remove');
  });

  test('holds its text below', () => {
    const { tree, offset } = at(
      'procedure A-1: T\n\nremoval\n  step: S\n    note:\n      One.\n\n      T$0wo.',
    );
    expect(lineAt(tree, offset)?.kind).toBe('text');
  });

  test('is none on a line of its own that is blank', () => {
    const { tree, offset } = at('procedure A-1: T\n$0\nremoval');
    expect(lineAt(tree, offset)).toBeUndefined();
  });
});

describe('the name at a place', () => {
  test.each([
    ['remove cap, wh$0eel with bar', 'wheel'],
    ['remove cap, wheel with bar$0', 'bar'],
    ['$0remove cap', 'remove'],
    ['wait 1 h, since disconnect bat$0tery', 'battery'],
    ['remove cap, when ax$0le heavy', 'axle'],
    ['note: To {hub$0-bolt torque}.', 'hub-bolt'],
    ['torque cap, 11$05 N·m', undefined],
  ])('%s', (code, name) => {
    const { tree, offset } = at(`procedure A-1: T\n\nremoval\n  step: S\n    ${code}`);
    const line = pathAt(tree, offset).pop();
    const names = line ? namesOf(line) : [];
    expect(names.find((each) => touches(each, offset))?.text).toBe(name);
  });

  test('all names of a line come in the order written', () => {
    const { tree } = parse(
      'catalogue: T\n\nrules\n  r: R\n    never remove a or any part marked b\n    while c not open',
      'a.bay',
    );
    const rule = pathAt(tree, tree.text.indexOf('while')).pop();
    expect(rule && namesOf(rule).map(({ text }) => text)).toEqual(['c', 'open']);
  });
});
