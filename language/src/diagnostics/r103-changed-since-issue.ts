// R103: changed since issue.
import { defineDiagnostic } from './define.js';
import { libraryFile } from './register-example.js';

const released = (path: string, revision: number, ...more: readonly string[]): string =>
  libraryFile(
    path,
    'A-1',
    'status released by KM, TR on 2026-10-05',
    `revision ${revision} on 2026-10-05: Cloth named.`,
    ...more,
  );
const cleaner = (path: string, cloth: string): string =>
  released(path, 1).replace('clean mirror-glass', `clean mirror-glass: Use a ${cloth}.`);

export const changedSinceIssue = defineDiagnostic<{
  readonly revision: number;
  readonly change: string;
  readonly more: number;
}>({
  code: 'R103',
  name: 'changed-since-issue',
  severity: 'warning',
  message: ({ revision, change, more }) =>
    `changed since revision ${revision} was issued: ${change}${more > 0 ? `, and ${more} more change${more === 1 ? '' : 's'}` : ''}`,
  advice: ({ revision }) => `add \`revision ${revision + 1}\` and issue it, or take the change back`,
  why: `The workshop holds a print of the last issue. When the text or a catalogue entry that it uses changes under the same revision, two papers with one number say different things, and nobody can tell which was followed.

A draft may change as it likes: this is asked only of what stands as released.`,
  wrong: `${cleaner('issued/A-1/1/source/a.bay', 'dry cloth')}${cleaner('a.bay', 'damp cloth').replace(
    'status released by KM, TR on 2026-10-05\n',
    'status released by KM, TR on 2026-10-05\n#      ^^^^^^^^ R103 Use a damp cloth\n',
  )}`,
  right: `${cleaner('issued/A-1/1/source/a.bay', 'dry cloth')}${cleaner('a.bay', 'dry cloth')}`,
});
