// Prints "N passed, N failed" from vitest's JSON report; exits with 1 when anything failed, the build included.
import { existsSync, readFileSync } from 'node:fs';

const [file = '', status = '1'] = process.argv.slice(2);
const report = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
const passed = report?.numPassedTests ?? 0;
// A file that cannot be loaded fails without a test of its own; a build or lint that fails leaves no report.
const brokenFiles =
  report?.testResults.filter((one) => one.status === 'failed' && one.assertionResults.length === 0).length ??
  0;
const failed = (report?.numFailedTests ?? 0) + brokenFiles;
const unexplained = status !== '0' && failed === 0 ? 1 : 0;
console.log(`${passed} passed, ${failed + unexplained} failed`);
process.exitCode = failed + unexplained > 0 ? 1 : 0;
