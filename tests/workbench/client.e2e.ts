// The packaged extension in a real workbench: what the client does by itself.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { type Driver, drive } from './driver.js';
import { startWorkbench, type Workbench } from './workbench.js';

const LIBRARY = fileURLToPath(new URL('./library', import.meta.url));

let bench: Workbench;
let technician: Driver;
beforeAll(async () => {
  bench = await startWorkbench('baywright', LIBRARY);
  technician = drive(bench.page);
});
afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await technician.screenshot(`failed: ${task.name}`);
});
afterAll(() => bench.close());

/** The one-based line of the procedure that holds `text`. */
function lineOf(text: string): number {
  const file = readFileSync(join(LIBRARY, 'procedures', 'FH-12-front-hub.bay'), 'utf8');
  return file.split('\n').findIndex((line) => line.includes(text)) + 1;
}

describe('a procedure in the editor', () => {
  test('opens as Baywright, coloured', async () => {
    await technician.open('FH-12-front-hub.bay');
    await bench.page.locator('.statusbar-item', { hasText: 'Baywright' }).first().waitFor();
    const colours = (): Promise<number> =>
      technician
        .line('applies to maristow-300')
        .locator('span span')
        .evaluateAll((spans) => new Set(spans.map((span) => getComputedStyle(span).color)).size);
    await expect.poll(colours).toBeGreaterThan(2);
    await technician.screenshot('1-coloured');
  });

  test('has Check, Print, Issue and Preview in the editor title', async () => {
    const actions = bench.page.locator('.editor-actions .action-label');
    const titles = await actions.evaluateAll((labels) =>
      labels.map((label) => label.getAttribute('aria-label') ?? ''),
    );
    for (const title of ['Check', 'Print', 'Issue', 'Preview Beside'])
      expect(
        titles.some((own) => own.startsWith(title)),
        title,
      ).toBe(true);
  });

  test('inserts a snippet', async () => {
    await technician.goTo(lineOf('recheck wheel-nut'));
    await technician.press('End');
    await technician.press('Enter');
    await technician.type('lift');
    await technician.press('Control+Space');
    // One word of the shop finds the verb and the snippet, each once.
    const rows = bench.page.locator('.suggest-widget.visible .monaco-list-row', { hasText: 'raise' });
    await rows.filter({ hasText: 'support' }).first().waitFor();
    expect(await rows.count()).toBe(2);
    await rows.filter({ hasText: 'support' }).click();
    await technician.line('raise vehicle with trolley-jack').waitFor();
    await technician.screenshot('2-snippet');
    await technician.press('Escape');
    await technician.run('File: Revert File');
  });
});

describe('the preview', () => {
  test('stands beside the text and follows the cursor', async () => {
    await technician.open('FH-12-front-hub.bay');
    await technician.goTo(lineOf('remove disc'));
    await technician.run('Baywright: Preview Beside');
    const here = technician.guide().locator('[data-here]');
    await expect.poll(() => here.textContent()).toMatch(/Remove the brake disc/);
    await technician.goTo(lineOf('chock rear-wheels'));
    await expect.poll(() => here.textContent()).toMatch(/Chock the rear wheels/);
    await technician.screenshot('3-preview');
  });

  test('goes to the source line on a click', async () => {
    await technician.guide().getByText('Set the gear selector to park').click();
    await bench.page.locator('.statusbar-item', { hasText: `Ln ${lineOf('set selector park')},` }).waitFor();
  });
});

describe('the views', () => {
  test('show the vehicle at the line, and the library', async () => {
    await bench.page.locator('.activitybar .action-label[aria-label="Baywright"]').click();
    await technician.open('FH-12-front-hub.bay');
    await technician.goTo(70);
    await expect.poll(() => technician.viewRows('Vehicle at This Line')).not.toHaveLength(0);
    await expect.poll(() => technician.viewRows('Procedures')).not.toHaveLength(0);
    await technician.screenshot('4-views');
  });
});

describe('a new procedure', () => {
  test('starts from a short job, from the palette', async () => {
    await technician.run('Baywright: New Procedure');
    await technician.line('procedure NEW-01').waitFor();
    await technician.screenshot('5-new-procedure');
  });

  test('is shown step by step in the walkthrough', async () => {
    await technician.run('Welcome: Open Walkthrough');
    await technician.pick('First procedure in five minutes');
    await bench.page.locator('.getting-started-step', { hasText: 'See what it finds' }).click();
    await bench.page.locator('.getting-started-media').waitFor();
    await technician.screenshot('6-walkthrough');
    // Its buttons act on the procedure that is open behind it.
    await bench.page
      .locator('.getting-started-step', { hasText: 'See what it finds' })
      .getByRole('button', { name: 'Check' })
      .click();
    await technician.line('procedure NEW-01').waitFor();
  });
});
