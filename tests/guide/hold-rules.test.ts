// Rules above and below a hold on the page: one between two of them, none twice before the next step.
import { expect, test } from 'vitest';
import { useBrowser, withPage } from './browser.js';
import { HEAD, lower } from './lower-helper.js';

useBrowser();

const HOLDS = `${HEAD}
removal
  step: Begin
    hold "A second technician looks."
    stop "Call the shop lead."
    chock rear-axle
    hold "A second technician looks again."

completion
  step: End
    chock rear-axle
    hold "The shop lead looks."
`;

test('a hold shares its rule with the hold or the step that follows at once', async () => {
  await withPage(lower(HOLDS).document, {}, async (page) => {
    const rules = await page
      .locator('.hold')
      .evaluateAll((rows) => rows.map((row) => getComputedStyle(row).backgroundPosition.split(', ').length));
    // Above and below; below alone, for the one above is that of the hold before; above alone; above and below.
    expect(rules).toEqual([2, 1, 1, 2]);
  });
});
