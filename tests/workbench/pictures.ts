// Pictures of the editor for the README, from the packaged extension with a sample open in which two things are
// forgotten.
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Locator } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { type Driver, drive } from './driver.js';
import { startWorkbench, type Workbench } from './workbench.js';

const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const PICTURES = at('language/docs/pictures');
const FILE = 'FH-12-front-hub.bay';
/** Lines that are left out of the sample, so that there is something to find. */
const FORGOTTEN = ['torque caliper-bolt', 'pump brake-pedal'];

let bench: Workbench;
let technician: Driver;
let text = '';
beforeAll(async () => {
  mkdirSync(PICTURES, { recursive: true });
  const folder = mkdtempSync(join(tmpdir(), 'baywright-pictures-'));
  cpSync(at('samples'), folder, {
    recursive: true,
    filter: (path) => !/\/(faulty|\.cache|out)(\/|$)/.test(path),
  });
  const path = join(folder, 'procedures', FILE);
  const lines = readFileSync(path, 'utf8').split('\n');
  text = lines.filter((line) => !FORGOTTEN.some((word) => line.trim().startsWith(word))).join('\n');
  writeFileSync(path, text);
  bench = await startWorkbench('baywright-linux-x64', folder, {
    'workbench.colorTheme': 'Default Light Modern',
    'workbench.activityBar.location': 'default',
    'breadcrumbs.enabled': false,
    'editor.stickyScroll.enabled': false,
  });
  rmSync(folder, { recursive: true, force: true });
  technician = drive(bench.page);
  await bench.page.setViewportSize({ width: 1280, height: 800 });
  await technician.open(FILE);
});
afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await technician.screenshot(`failed: ${task.name}`);
});
afterAll(() => bench.close());

const lineOf = (start: string): number =>
  text.split('\n').findIndex((line) => line.trim().startsWith(start)) + 1;

test('the editor with its findings and the guide beside', async () => {
  await technician.run('View: Toggle Primary Side Bar Visibility');
  await technician.run('Baywright: Preview Beside');
  await technician.guide().locator('[data-line]').first().waitFor();
  await technician.run('Baywright: Check');
  await bench.page.locator('.markers-panel .monaco-list-row', { hasText: 'caliper-bolt' }).first().waitFor();
  await technician.toText();
  await technician.goTo(lineOf('torque hub-bolt'));
  await expect.poll(() => technician.guide().locator('[data-here]').textContent()).toMatch(/115/);
  await bench.page.mouse.move(640, 400);
  await bench.page.screenshot({ path: join(PICTURES, 'editor.png') });
});

test('the vehicle at a line', async () => {
  await technician.run('View: Toggle Panel Visibility');
  await technician.toText();
  await technician.run('View: Close Editors in Other Groups');
  await bench.page.locator('.activitybar .action-label[aria-label="Baywright"]').click();
  await bench.page.mouse.move(640, 400);
  await technician.toText();
  await technician.goTo(lineOf('measure disc-thickness'));
  await expect.poll(async () => (await technician.viewRows('Vehicle at This Line')).join()).toMatch(/disc/i);
  await bench.page.locator('.pane-header[aria-label^="Procedures"]').click();
  // Wide enough for the words behind the things.
  const edge = await box(bench.page.locator('.part.sidebar'));
  await bench.page.mouse.move(edge.x + edge.width, 400);
  await bench.page.mouse.down();
  await bench.page.mouse.move(edge.x + 480, 400, { steps: 5 });
  await bench.page.mouse.up();
  await bench.page.mouse.move(640, 600);
  const { x, y, height } = await box(bench.page.locator('.part.sidebar'));
  await bench.page.screenshot({
    path: join(PICTURES, 'state-view.png'),
    clip: { x, y, width: 960, height: Math.min(height, 560) },
  });
});

async function box(of: Locator): Promise<{ x: number; y: number; width: number; height: number }> {
  const found = await of.boundingBox();
  if (!found) throw new Error('that part of the editor is not in sight');
  return found;
}
