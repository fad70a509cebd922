// A draft without a revision line says nothing of a revision, in print and on the page.
import { expect, test } from 'vitest';
import { revisionText } from '../../compiler/src/document/revision.js';
import { fh12 } from './fixtures/fh-12.js';

test('the edition is named with its day, and not at all before there is one', () => {
  const document = fh12();
  expect(revisionText(document)).toContain(document.identity.date);
  const { identity } = document;
  expect(revisionText({ ...document, identity: { ...identity, revision: '–', date: '' } })).toBe('');
});
