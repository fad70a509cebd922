// Pages of documents opened in a browser. Needs Debian's chromium.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import type { GuideDocument } from '../../compiler/src/document/document.js';
import { renderHtml } from '../../compiler/src/output.js';

const folder = mkdtempSync(join(tmpdir(), 'baywright-pages-'));
let browser: Browser;

/** The browser of a test file, opened before its tests and closed after them. */
export function useBrowser(): void {
  beforeAll(async () => {
    browser = await chromium.launch({
      executablePath: '/usr/bin/chromium',
      args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
    });
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });
}

function pageAddress(document: GuideDocument): string {
  const path = join(folder, `${document.identity.number}-${document.sheet}.html`);
  writeFileSync(path, renderHtml(document).html);
  return pathToFileURL(path).href;
}

/** Opens a page; every request but the page itself, and every error, fails the test. */
export async function withPage(
  document: GuideDocument,
  options: BrowserContextOptions,
  use: (page: Page) => Promise<void>,
) {
  const context = await browser.newContext({ bypassCSP: false, ...options });
  try {
    const page = await context.newPage();
    const wrong: string[] = [];
    page.on('pageerror', (error) => wrong.push(error.message));
    page.on('console', (message) => message.type() === 'error' && wrong.push(message.text()));
    page.on(
      'request',
      (request) => /^(?:file|data|blob):/.test(request.url()) || wrong.push(`asked for ${request.url()}`),
    );
    await page.goto(pageAddress(document));
    await use(page);
    expect(wrong).toEqual([]);
  } finally {
    await context.close();
  }
}
