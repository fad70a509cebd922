// What a technician does in the editor, in words: open a file, put the cursor somewhere, run a command, read what is shown.
import { join } from 'node:path';
import type { FrameLocator, Locator, Page } from 'playwright-core';
import { SCREENSHOTS } from './workbench.js';

export interface Driver {
  open(file: string): Promise<void>;
  /** Runs a command of the palette by its title. */
  run(title: string): Promise<void>;
  /** Puts the cursor on a line and column, both one-based, of the active editor. */
  goTo(line: number, column?: number): Promise<void>;
  type(text: string): Promise<void>;
  press(keys: string): Promise<void>;
  /** Answers the list that is open, by the start of an entry. */
  pick(entry: string): Promise<void>;
  /** Fills the one-line box that asks for `prompt` and confirms it. */
  answer(prompt: string, text: string): Promise<void>;
  /** Puts the hand back on the text: the first group of editors. */
  toText(): Promise<void>;
  /** The visible line of the active editor whose text holds `text`. */
  line(text: string): Locator;
  /** Rows of a view of the side bar, as text. */
  viewRows(title: string): Promise<string[]>;
  /** The guide inside the preview. */
  guide(): FrameLocator;
  preview(): FrameLocator;
  screenshot(name: string): Promise<void>;
}

export function drive(page: Page): Driver {
  const input = page.locator('.quick-input-widget .quick-input-box input[type=text]').first();
  const quickOpen = async (keys: string, text: string): Promise<void> => {
    // The keys are lost while a page of an extension has them or another list is closing: press until the list is there.
    for (let attempt = 1; ; attempt += 1) {
      await page.keyboard.press(keys);
      if (
        await input.fill(text, { timeout: 2000 }).then(
          () => true,
          () => attempt === 5,
        )
      )
        return;
    }
  };
  const preview = (): FrameLocator =>
    page.frameLocator('iframe.webview.ready').frameLocator('iframe#active-frame');
  const driver: Driver = {
    open: async (file) => {
      await quickOpen('Control+P', file);
      await page.locator('.quick-input-list .monaco-list-row').filter({ hasText: file }).first().waitFor();
      await page.keyboard.press('Enter');
      await page.locator('.editor-group-container.active .tab.active').filter({ hasText: file }).waitFor();
      await page.locator('.editor-instance .view-lines').first().waitFor();
    },
    run: async (title) => {
      await quickOpen('F1', `>${title}`);
      await page.locator('.quick-input-list .monaco-list-row').filter({ hasText: title }).first().waitFor();
      await page.keyboard.press('Enter');
    },
    goTo: async (line, column = 1) => {
      await quickOpen('Control+G', `:${line}:${column}`);
      await page.keyboard.press('Enter');
      await input.waitFor({ state: 'hidden' });
    },
    type: (text) => page.keyboard.type(text, { delay: 15 }),
    press: (keys) => page.keyboard.press(keys),
    pick: async (entry) => {
      const rows = page.locator('.quick-input-widget:visible .monaco-list-row');
      await rows.first().waitFor();
      await input.fill(entry);
      await rows.filter({ hasText: entry }).first().click();
    },
    answer: async (prompt, text) => {
      await page.locator('.quick-input-widget:visible', { hasText: prompt }).waitFor();
      await input.fill(text);
      await page.keyboard.press('Enter');
    },
    toText: async () => {
      await page.keyboard.press('Control+1');
      await page.locator('.editor-instance .view-lines').first().waitFor();
    },
    line: (text) =>
      page
        .locator('.editor-instance .view-line')
        .filter({ hasText: spaces(text) })
        .first(),
    viewRows: async (title) => {
      const pane = page
        .locator('.pane')
        .filter({ has: page.locator(`.pane-header[aria-label^="${title}"]`) });
      return (await pane.locator('.monaco-list-row').allInnerTexts()).map((row) =>
        row.replace(/\s+/g, ' ').trim(),
      );
    },
    preview,
    guide: () => preview().frameLocator('iframe#guide'),
    screenshot: async (name) => void (await page.screenshot({ path: join(SCREENSHOTS, `${name}.png`) })),
  };
  return driver;
}

/** The editor draws spaces as no-break spaces. */
function spaces(text: string): RegExp {
  return new RegExp(text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(' ', '[\\s\\u00a0]'));
}
