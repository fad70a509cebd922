// Starts the editor that runs wholly in the browser, with a packaged extension and a folder that is not on disk: no
// Node anywhere but in the small file server here. It proves the web entry and the server in a worker.
import { execFileSync } from 'node:child_process';
import {
  createReadStream,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
} from 'node:fs';
import { createServer, type ServerResponse } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { BROWSER_DIST } from './fetch.mjs';
import { openWindow, packageNamed, QUIET, SCREENSHOTS, type Workbench } from './workbench.js';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.wasm': 'application/wasm',
  '.ttf': 'font/ttf',
  '.woff2': 'font/woff2',
};

export async function startBrowserWorkbench(vsix: string, folder: string): Promise<Workbench> {
  mkdirSync(SCREENSHOTS, { recursive: true });
  const home = mkdtempSync(join(tmpdir(), 'baywright-browser-'));
  execFileSync('unzip', ['-q', packageNamed(vsix), '-d', home]);
  const library = JSON.stringify(textsOf(folder));
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const { port } = server.address() as { port: number };
    if (pathname === '/') return send(response, '.html', page(port));
    if (pathname === '/library.json') return send(response, '.json', library);
    const root = pathname.startsWith('/extension/')
      ? home
      : pathname.startsWith('/browser-files/')
        ? fileURLToPath(new URL('.', import.meta.url))
        : BROWSER_DIST;
    return sendFile(response, join(root, normalize(pathname)));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as { port: number };
  const { page: window, browser } = await openWindow(`http://main.bench.localhost:${port}/`);
  return {
    page: window,
    folder,
    close: async () => {
      await browser.close();
      server.closeAllConnections();
      server.close();
      rmSync(home, { recursive: true, force: true });
    },
  };
}

/** The start page: loads the editor and tells it which extensions and which folder to open. */
function page(port: number): string {
  const extension = (path: string): object => ({
    scheme: 'http',
    authority: `main.bench.localhost:${port}`,
    path,
  });
  const configuration = {
    folderUri: { scheme: 'library', path: '/' },
    additionalBuiltinExtensions: [extension('/extension'), extension('/browser-files')],
    configurationDefaults: QUIET,
    productConfiguration: {
      nameShort: 'Workbench',
      nameLong: 'Workbench',
      applicationName: 'workbench',
      version: '1.91.1',
      enableTelemetry: false,
      // Pages of extensions get an origin of their own, below a common name: to the browser they are one site. All names
      // below localhost lead here.
      webviewContentExternalBaseUrlTemplate: `http://{{uuid}}.bench.localhost:${port}/out/vs/workbench/contrib/webview/browser/pre/`,
    },
  };
  return `<!doctype html><html><head><meta charset="utf-8">
<link rel="stylesheet" href="/out/vs/workbench/workbench.web.main.css"></head><body aria-label="">
<script src="/out/vs/loader.js"></script><script src="/out/vs/webPackagePaths.js"></script>
<script>
for (const name of Object.keys(self.webPackagePaths)) self.webPackagePaths[name] = location.origin + '/node_modules/' + name + '/' + self.webPackagePaths[name];
require.config({ baseUrl: location.origin + '/out', paths: self.webPackagePaths });
</script>
<script src="/out/vs/workbench/workbench.web.main.nls.js"></script><script src="/out/vs/workbench/workbench.web.main.js"></script>
<script>
require(['vs/workbench/workbench.web.main', 'vs/base/common/uri'], ({ create }, { URI }) => {
  const { folderUri, additionalBuiltinExtensions, ...rest } = ${JSON.stringify(configuration)};
  create(document.body, {
    ...rest,
    additionalBuiltinExtensions: additionalBuiltinExtensions.map((uri) => URI.revive(uri)),
    workspaceProvider: { workspace: { folderUri: URI.revive(folderUri) }, trusted: true, open: async () => false },
  });
});
</script></body></html>`;
}

function textsOf(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    statSync(join(folder, name)).isFile(),
  );
  return Object.fromEntries(names.map((name) => [`/${name}`, readFileSync(join(folder, name), 'utf8')]));
}

function send(response: ServerResponse, type: string, body: string): void {
  response.writeHead(200, { 'content-type': TYPES[type] });
  response.end(body);
}

function sendFile(response: ServerResponse, path: string): void {
  if (!statSync(path, { throwIfNoEntry: false })?.isFile()) {
    response.writeHead(404).end();
    return;
  }
  response.writeHead(200, {
    'content-type': TYPES[extname(path)] ?? 'application/octet-stream',
    'access-control-allow-origin': '*',
  });
  createReadStream(path).pipe(response);
}
