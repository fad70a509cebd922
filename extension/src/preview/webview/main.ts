// The script of the preview page: shows the guide in its frame, tells the editor what the reader does.
import type { FromPage, PageState, ToPage } from '../messages.js';
import { guideFrame } from './frame.js';

interface Editor {
  postMessage(message: FromPage): void;
  setState(state: PageState): void;
}
declare function acquireVsCodeApi(): Editor;

const editor = acquireVsCodeApi();
const body = document.body;
let state = JSON.parse(body.dataset.state ?? '{}') as PageState;
editor.setState(state);
/** The sheet that is in the frame. */
let shown = state.kind;

const frame = guideFrame(element('guide', HTMLIFrameElement), body.dataset.nonce ?? '', {
  clicked: (line) => editor.postMessage({ type: 'goTo', line }),
  scrolled: (line) => editor.postMessage({ type: 'scrolled', line }),
});
const sorry = element('sorry', HTMLParagraphElement);
const units = element('units', HTMLSelectElement);
const tabs = [...document.querySelectorAll<HTMLButtonElement>('[role=tab]')];

window.addEventListener('message', ({ data }: MessageEvent<ToPage>) => {
  if (data.type === 'reveal') frame.reveal(data.line, data.mark);
  if (data.type === 'sorry') {
    sorry.textContent = data.message;
    sorry.hidden = false;
  }
  if (data.type === 'show') {
    sorry.hidden = true;
    units.value = data.unitOrder;
    element('pdf', HTMLButtonElement).hidden = !data.canMakePdf;
    element('findings', HTMLOutputElement).textContent = data.findingWords;
    frame.show(data.html, data.paper === 'as the editor' ? theme() : 'light');
    if (data.kind !== shown) frame.top();
    shown = data.kind;
  }
});

for (const tab of tabs) tab.addEventListener('click', () => choose(tab));
// Tabs are one stop of the Tab key; the arrow keys move among them (WAI-ARIA Authoring Practices, tabs pattern).
document.querySelector('[role=tablist]')?.addEventListener('keydown', (event) => {
  if (!(event instanceof KeyboardEvent)) return;
  const step = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
  const at = tabs.findIndex((tab) => tab.ariaSelected === 'true');
  const next = step === 0 ? undefined : tabs[(at + step + tabs.length) % tabs.length];
  next?.focus();
  next?.click();
});
units.addEventListener('change', () => {
  editor.postMessage({ type: 'units', unitOrder: units.value as 'as written' | 'metric first' | 'US first' });
});
for (const type of ['choose', 'print', 'html', 'pdf'] as const) {
  element(type, HTMLButtonElement).addEventListener('click', () => editor.postMessage({ type }));
}
new MutationObserver(() => frame.theme(theme())).observe(body, {
  attributes: true,
  attributeFilter: ['class'],
});
editor.postMessage({ type: 'ready' });

function choose(tab: HTMLButtonElement): void {
  for (const other of tabs) {
    other.ariaSelected = String(other === tab);
    other.tabIndex = other === tab ? 0 : -1;
  }
  const kind = tab.dataset.kind as PageState['kind'];
  state = { ...state, kind };
  editor.setState(state);
  editor.postMessage({ type: 'kind', kind });
}

/** The editor marks the body of its pages with the kind of its theme. */
function theme(): 'light' | 'dark' {
  const names = body.classList;
  const light = names.contains('vscode-light') || names.contains('vscode-high-contrast-light');
  return light ? 'light' : 'dark';
}

function element<Kind extends HTMLElement>(id: string, kind: new () => Kind): Kind {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`the preview page has no ${id}`);
  return found;
}
