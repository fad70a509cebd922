// Prints "N passed, N failed" from vitest's JSON reports, each given as FILE:EXIT-CODE; exits with 1 when anything
// failed, what never got as far as a test included.
import { existsSync, readFileSync } from 'node:fs';

let passed = 0;
let failed = 0;
for (const result of process.argv.slice(2)) {
  const [file = '', status = '1'] = result.split(':');
  const report = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
  // A file that cannot be loaded fails without a test of its own; a build, lint or download that fails leaves no report.
  const broken = (report?.testResults ?? []).filter(
    (one) => one.status === 'failed' && one.assertionResults.length === 0,
  ).length;
  const counted = (report?.numFailedTests ?? 0) + broken;
  const unexplained = status !== '0' && counted === 0 ? 1 : 0;
  if (unexplained) console.log(`${file}: failed before or beside its tests (exit code ${status})`);
  passed += report?.numPassedTests ?? 0;
  failed += counted + unexplained;
}
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
