// The packaged extension in an editor that runs wholly in the browser: the server is a web worker, the folder not on disk.
import { fileURLToPath } from 'node:url';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { startBrowserWorkbench } from './browser-workbench.js';
import { type Driver, drive } from './driver.js';
import type { Workbench } from './workbench.js';

let bench: Workbench;
let technician: Driver;
beforeAll(async () => {
  bench = await startBrowserWorkbench('baywright', fileURLToPath(new URL('./library', import.meta.url)));
  technician = drive(bench.page);
});
afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await technician.screenshot(`failed in the browser: ${task.name}`);
});
afterAll(() => bench.close());

test('opens a procedure and shows its findings', async () => {
  await bench.page.locator('.explorer-folders-view .monaco-list-row', { hasText: 'procedures' }).click();
  await bench.page
    .locator('.explorer-folders-view .monaco-list-row', { hasText: 'FH-12-front-hub.bay' })
    .dblclick();
  await technician.line('applies to maristow-300').waitFor();
  await technician.goTo(87);
  await bench.page.locator('.squiggly-error').first().waitFor({ state: 'attached' });
  await technician.screenshot('browser-1-findings');
});

test('previews the guide', async () => {
  await technician.goTo(62);
  await technician.run('Baywright: Preview Beside');
  await expect.poll(() => technician.guide().locator('body').textContent()).toMatch(/Chock the rear wheels/);
  await technician.screenshot('browser-2-preview');
  expect(await technician.preview().locator('[role=tab]').count()).toBe(4);
});
