// The faulty samples show each kind of finding once: a folder for every code and none left over. That they are up to
// date is asked with the other generated files, that each has the marked finding alone with the catalogue.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { DIAGNOSTICS } from '../../language/src/diagnostics/index.js';
import { faultyName } from '../generated/faulty.js';
import { SAMPLES } from './sample-library.js';

it('has one folder for each kind of finding', () => {
  const folders = readdirSync(join(SAMPLES, 'faulty'), { withFileTypes: true }).filter((entry) =>
    entry.isDirectory(),
  );
  const shown = DIAGNOSTICS.filter((def) => def.wrong !== '');
  expect(folders.map((entry) => entry.name).sort()).toEqual(shown.map(faultyName).sort());
});
