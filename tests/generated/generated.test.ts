// Generated files are what the code makes now. `npm run generate` mends a failure.
import { expect, it } from 'vitest';
import { GENERATED_FILES } from './files.js';
import { missingLicences } from './third-party.js';

it.each(GENERATED_FILES.map((file) => [file.path, file] as const))('%s is up to date', async (path, file) => {
  await expect(file.text()).toMatchFileSnapshot(`../../${path}`);
});

it('nothing is shipped without its licence', () => {
  expect(missingLicences()).toEqual([]);
});
