// Starts a real editor workbench with a packaged extension in it and a folder open, in a browser window.
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { SERVER_ENTRY } from './fetch.mjs';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
export const SCREENSHOTS = join(ROOT, 'out', 'workbench');
const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';

export interface Workbench {
  readonly page: Page;
  /** The folder that is open: a copy that the test may change. */
  readonly folder: string;
  close(): Promise<void>;
}

/** Settings that keep the editor from showing anything but what is under test. */
export const QUIET: Readonly<Record<string, unknown>> = {
  'security.workspace.trust.enabled': false,
  'workbench.startupEditor': 'none',
  'workbench.colorTheme': 'Default Dark Modern',
  'workbench.tips.enabled': false,
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'extensions.autoUpdate': false,
  'extensions.ignoreRecommendations': true,
  'chat.commandCenter.enabled': false,
  'window.menuBarVisibility': 'compact',
  'editor.minimap.enabled': false,
};

/** Opens `folder` (a copy of it) with the package in out/extension whose name starts with `vsix`. */
export async function startWorkbench(
  vsix: string,
  folder: string,
  settings: Readonly<Record<string, unknown>> = {},
): Promise<Workbench> {
  mkdirSync(SCREENSHOTS, { recursive: true });
  const home = mkdtempSync(join(tmpdir(), 'baywright-workbench-'));
  const [data, extensions, copy] = ['data', 'extensions', 'library'].map((name) => join(home, name)) as [
    string,
    string,
    string,
  ];
  cpSync(folder, copy, { recursive: true });
  mkdirSync(join(data, 'User'), { recursive: true });
  writeFileSync(join(data, 'User', 'settings.json'), JSON.stringify({ ...QUIET, ...settings }));
  const common = ['--user-data-dir', data, '--extensions-dir', extensions];
  execFileSync(process.execPath, [SERVER_ENTRY, ...common, '--install-extension', packageNamed(vsix)], {
    stdio: 'pipe',
    env: quietEnvironment(home),
  });
  const port = await freePort();
  const server = spawn(
    process.execPath,
    [
      SERVER_ENTRY,
      '--auth',
      'none',
      '--bind-addr',
      `127.0.0.1:${port}`,
      '--disable-telemetry',
      '--disable-update-check',
      '--disable-getting-started-override',
      ...common,
    ],
    { stdio: 'pipe', env: quietEnvironment(home) },
  );
  await answering(`http://127.0.0.1:${port}/healthz`, server);
  const { page, browser } = await openWindow(`http://127.0.0.1:${port}/?folder=${encodeURIComponent(copy)}`);
  return {
    page,
    folder: copy,
    close: async () => {
      await browser.close();
      server.kill();
      rmSync(home, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/** A browser window on the address, once the workbench is drawn. */
export async function openWindow(url: string): Promise<{ readonly page: Page; readonly browser: Browser }> {
  const browser = await chromium.launch({
    executablePath: CHROMIUM,
    args: ['--no-sandbox', '--disable-gpu'],
  });
  const context = await browser.newContext({
    viewport: { width: 1500, height: 900 },
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  await page.goto(url);
  await page.locator('.monaco-workbench .part.statusbar').waitFor({ timeout: 60_000 });
  return { page, browser };
}

export function packageNamed(start: string): string {
  const { version } = JSON.parse(readFileSync(join(ROOT, 'extension', 'package.json'), 'utf8')) as {
    version: string;
  };
  const wanted = `${start}-${version}.vsix`;
  const folder = join(ROOT, 'out', 'extension');
  if (!readdirSync(folder).includes(wanted))
    throw new Error(`${wanted} is not in out/extension; run: npm run package`);
  return join(folder, wanted);
}

/** The editor's own settings and caches stay in the test's folder, and it takes no hints from an editor around us. */
function quietEnvironment(home: string): NodeJS.ProcessEnv {
  return { PATH: process.env.PATH, HOME: home, LANG: 'C.UTF-8' };
}

async function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() =>
        typeof address === 'object' && address ? resolve(address.port) : reject(new Error('no port')),
      );
    });
  });
}

async function answering(url: string, server: ChildProcess): Promise<void> {
  let said = '';
  server.stdout?.on('data', (data: Buffer) => (said += data.toString()));
  server.stderr?.on('data', (data: Buffer) => (said += data.toString()));
  for (let attempt = 0; attempt < 150; attempt += 1) {
    if (server.exitCode !== null) break;
    if (
      await fetch(url).then(
        (response) => response.ok,
        () => false,
      )
    )
      return;
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
  throw new Error(`the workbench does not answer:\n${said}`);
}
