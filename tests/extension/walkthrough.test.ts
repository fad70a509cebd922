// The procedure of the walkthrough shows what it is there to show.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { createLibrary } from '../../language/src/analysis.js';
import { settingsSchema } from '../../language/src/settings/index.js';

test('one thing is forgotten in it: the wheel nuts are never torqued', () => {
  const text = readFileSync(
    new URL('../../extension/walkthrough/first-procedure.bay', import.meta.url),
    'utf8',
  );
  const library = createLibrary(
    { read: (path) => (path === 'new.bay' ? text : undefined), list: () => ['new.bay'] },
    settingsSchema.parse({}),
  );
  const findings = library.analyse('new.bay')?.findings ?? [];
  expect(findings.map(({ code, message }) => `${code} ${message}`)).toEqual([
    expect.stringMatching(/wheel.nut/),
  ]);
});
