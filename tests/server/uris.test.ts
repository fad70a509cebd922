// URIs as editors spell them, brought to one form.
import { describe, expect, test } from 'vitest';
import { above, normalUri } from '../../server/src/uris.js';

test.each([
  ['file:///c%3A/Shop/FH%2D12.bay', 'file:///c:/Shop/FH-12.bay'],
  ['file:///C:/Shop/FH-12.bay', 'file:///c:/Shop/FH-12.bay'],
  ['file:/shop/a.bay', 'file:///shop/a.bay'],
  ['library:/', 'library:///'],
  ['library:/procedures/a.bay', 'library:///procedures/a.bay'],
  ['store://depot/procedures/a b.bay', 'store://depot/procedures/a%20b.bay'],
  ['untitled:/shop/new-procedure.bay', 'file:///shop/new-procedure.bay'],
  ['untitled:Untitled-1', 'unnamed:///Untitled-1.bay'],
  ['untitled:pump.bay', 'unnamed:///pump.bay'],
])('%s is %s', (spelled, normal) => {
  expect(normalUri(spelled)).toBe(normal);
  expect(normalUri(normal)).toBe(normal);
});

describe('the folder above', () => {
  test.each([
    ['file:///shop/procedures/', 'file:///shop/'],
    ['file:///shop/', undefined],
    ['library:///procedures/', 'library:///'],
    ['library:///', undefined],
    ['store://depot/procedures/', 'store://depot/'],
    ['store://depot/', undefined],
  ])('%s is %s', (folder, up) => {
    expect(above(folder)).toBe(up);
  });
});
