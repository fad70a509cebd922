// The preview in a high-contrast theme: drawn in its colours, and without barriers that a program can find.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import type { AxeResults } from 'axe-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { type Driver, drive } from './driver.js';
import { startWorkbench, type Workbench } from './workbench.js';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let bench: Workbench;
let technician: Driver;
beforeAll(async () => {
  const folder = fileURLToPath(new URL('./library', import.meta.url));
  bench = await startWorkbench('baywright', folder, { 'workbench.colorTheme': 'Default High Contrast' });
  technician = drive(bench.page);
  await technician.open('FH-12-front-hub.bay');
  await technician.run('Baywright: Preview Beside');
  await technician.guide().locator('[data-line]').first().waitFor();
});
afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await technician.screenshot(`failed: ${task.name}`);
});
afterAll(() => bench.close());

test('the preview wears the theme', async () => {
  await technician.preview().locator('body.vscode-high-contrast').waitFor();
  await technician.screenshot('7-high-contrast');
});

test('tabs are moved through with the arrow keys', async () => {
  const tab = (name: string) => technician.preview().getByRole('tab', { name });
  await tab('Guide').focus();
  await technician.press('ArrowRight');
  expect(await tab('Torque card').getAttribute('aria-selected')).toBe('true');
  await technician.press('ArrowLeft');
  expect(await tab('Guide').getAttribute('aria-selected')).toBe('true');
});

test('the preview has no barrier that axe finds', async () => {
  const body = await technician.preview().locator('body').elementHandle();
  const frame = await body?.ownerFrame();
  if (!frame) throw new Error('the preview has no frame');
  await frame.evaluate(AXE);
  // The guide in its own frame is tested where guides are tested; here it is the shell around it.
  const results = await frame.evaluate(async () => {
    const { axe } = globalThis as unknown as { axe: { run(context: object): Promise<AxeResults> } };
    return axe.run({ include: [['body']], exclude: [['iframe']] });
  });
  expect(
    results.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`),
  ).toEqual([]);
});
