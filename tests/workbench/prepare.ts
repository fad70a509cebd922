// Before all end-to-end tests: fetch the workbench once, package the extension as it is now.
import { execFileSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { fetchWorkbench } from './fetch.mjs';
import { SCREENSHOTS } from './workbench.js';

const PACKAGE_SCRIPT = fileURLToPath(new URL('../../extension/scripts/package.mjs', import.meta.url));

export default function prepare(): void {
  rmSync(SCREENSHOTS, { recursive: true, force: true });
  fetchWorkbench();
  execFileSync(process.execPath, [PACKAGE_SCRIPT, '--target', 'universal', '--target', 'linux-x64'], {
    stdio: 'inherit',
  });
}
