// The frame that holds the guide. Its sandbox runs no scripts; rows carry the line they come from as `data-line`.

export interface GuideFrame {
  show(html: string, theme: 'light' | 'dark'): void;
  theme(theme: 'light' | 'dark'): void;
  reveal(line: number, mark: boolean): void;
  /** Back to the head of the sheet. */
  top(): void;
}

interface Reader {
  /** The reader clicked a row of this line. */
  clicked(line: number): void;
  /** The reader scrolled; a row of this line is at the top. */
  scrolled(line: number): void;
}

/** A scroll that the page made itself is no act of the reader; its events come within this time, in milliseconds. */
const ECHO = 250;
const HERE = 'data-here';

const OWN_STYLE = `
[data-line] { cursor: pointer }
[${HERE}] { outline: 2px solid var(--accent, currentColor); outline-offset: 3px }
@media (prefers-reduced-motion: no-preference) { html { scroll-behavior: auto !important } }
`;

export function guideFrame(frame: HTMLIFrameElement, nonce: string, reader: Reader): GuideFrame {
  let movedAt = 0;
  const page = (): Document => {
    const own = frame.contentDocument;
    if (!own) throw new Error('the guide frame is not there');
    return own;
  };
  page().addEventListener('click', (event) => {
    // The frame has classes of its own, so `instanceof` cannot tell an element here; clicks always land on one.
    const row = (event.target as Element | null)?.closest('[data-line]');
    if (row) reader.clicked(lineOf(row));
  });
  page().addEventListener('scroll', () => {
    if (Date.now() - movedAt < ECHO) return;
    const top = rows(page()).find((row) => row.getBoundingClientRect().bottom > 0);
    if (top) reader.scrolled(lineOf(top));
  });
  let styles: readonly string[] = [];
  const wear = (theme: 'light' | 'dark'): void => {
    frame.style.colorScheme = theme;
    page().documentElement.dataset.theme = theme;
    setStyles(page(), [...styles.map((style) => inTheme(style, theme)), OWN_STYLE], nonce);
  };
  return {
    show: (html, theme) => {
      const made = new DOMParser().parseFromString(html, 'text/html');
      for (const script of made.querySelectorAll('script, iframe, object, embed, base, link, meta'))
        script.remove();
      const own = page();
      copyAttributes(made.documentElement, own.documentElement);
      copyAttributes(made.body, own.body);
      styles = [...made.querySelectorAll('style')].map((style) => style.textContent ?? '');
      for (const style of made.body.querySelectorAll('style')) style.remove();
      own.body.replaceChildren(...[...made.body.childNodes].map((node) => own.importNode(node, true)));
      wear(theme);
    },
    theme: wear,
    top: () => {
      movedAt = Date.now();
      page().defaultView?.scrollTo(0, 0);
    },
    reveal: (line, mark) => {
      const row = rowOf(page(), line);
      for (const marked of page().querySelectorAll(`[${HERE}]`)) marked.removeAttribute(HERE);
      if (!row) return;
      if (mark) row.setAttribute(HERE, '');
      movedAt = Date.now();
      row.scrollIntoView({ block: mark ? 'center' : 'start' });
    },
  };
}

function rows(page: Document): HTMLElement[] {
  return [...page.querySelectorAll<HTMLElement>('[data-line]')];
}

function lineOf(row: Element): number {
  return Number(row.getAttribute('data-line'));
}

/** The row of the line, else of the nearest line above it. Rows need not stand in the order of the text. */
function rowOf(page: Document, line: number): HTMLElement | undefined {
  let best: HTMLElement | undefined;
  for (const row of rows(page)) {
    const own = lineOf(row);
    if (own <= line && (best === undefined || own >= lineOf(best))) best = row;
  }
  return best;
}

/**
 * The guide's own dark colours ask `prefers-color-scheme`, which is the scheme of the machine and not of the editor's
 * theme: the question is answered here.
 */
function inTheme(style: string, theme: 'light' | 'dark'): string {
  return style.replace(/\(\s*prefers-color-scheme\s*:\s*(light|dark)\s*\)/g, (_all, asked: string) =>
    asked === theme ? '(min-width: 0)' : '(max-width: 0)',
  );
}

/** Styles that have not changed stay, so that typing does not make the page flicker. */
function setStyles(page: Document, texts: readonly string[], nonce: string): void {
  const present = [...page.head.querySelectorAll('style')];
  if (present.length === texts.length && present.every((style, index) => style.textContent === texts[index]))
    return;
  page.head.replaceChildren(
    ...texts.map((text) => {
      const style = page.createElement('style');
      style.nonce = nonce;
      style.textContent = text;
      return style;
    }),
  );
}

function copyAttributes(from: Element, to: Element): void {
  for (const { name } of [...to.attributes]) to.removeAttribute(name);
  for (const { name, value } of from.attributes) if (!name.startsWith('on')) to.setAttribute(name, value);
}
