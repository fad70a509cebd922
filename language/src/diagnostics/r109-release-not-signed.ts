// R109: release not signed.
import { defineDiagnostic } from './define.js';
import { libraryFile } from './register-example.js';

export const releaseNotSigned = defineDiagnostic<{ readonly problem: string }>({
  code: 'R109',
  name: 'release-not-signed',
  severity: 'warning',
  message: (d) => d.problem,
  advice: () =>
    'write `status released by KM, TR on 2026-10-05`: who proved the newest revision, who released it, and when',
  why: `Two people stand for a released procedure: one who has worked through it on a vehicle and one who lets it go out. They sign the text of that day: a revision that is written later is proved and released again. The settings \`release.by\` and \`release.twoInitials\` say what this house asks for.`,
  wrong: libraryFile('a.bay', 'A-1', 'status released by KM on 2026-10-05', '#      ^^^^^^^^ R109'),
  right: libraryFile('a.bay', 'A-1', 'status released by KM, TR on 2026-10-05'),
});
