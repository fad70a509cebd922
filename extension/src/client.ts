// The entry of the package, one for the desktop and the browser: what tells them apart is small, and what both share,
// the language client above all, is packed once. Only the way that is taken is loaded.
import type { ExtensionContext } from 'vscode';

export async function activate(context: ExtensionContext): Promise<void> {
  const { activate: begin } = isBrowser() ? await import('./web.js') : await import('./desktop.js');
  await begin(context);
}

/** A browser runs extensions in a worker; the desktop, and a remote machine, in Node. */
function isBrowser(): boolean {
  return 'WorkerGlobalScope' in globalThis;
}
