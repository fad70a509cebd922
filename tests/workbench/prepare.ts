// Before all end-to-end tests: fetch the workbench once, package the extension as it is now.
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { fetchWorkbench } from './fetch.mjs';

const PACKAGE_SCRIPT = fileURLToPath(new URL('../../extension/scripts/package.mjs', import.meta.url));

export default function prepare(): void {
  fetchWorkbench();
  execFileSync(process.execPath, [PACKAGE_SCRIPT, '--target', 'universal', '--target', 'linux-x64'], {
    stdio: 'inherit',
  });
}
