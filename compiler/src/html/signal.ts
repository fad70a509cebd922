// Safety messages on the page (signal words of ANSI Z535.6): word cell, symbol but for NOTICE, message. The frame and
// the reversed cell tell the words apart without colour.
import type { Signal } from '@baywright/language';
import { alertDrawing } from '../document/drawing/symbols.js';
import { SAFETY_COLOURS } from '../safety-colours.js';
import type { PageContext } from './context.js';
import { drawn, PAGE_INKS } from './drawn.js';
import { el, type Markup } from './markup.js';

export function panelMarkup(
  signal: Signal,
  word: string,
  { safetyColours }: PageContext,
  body: Markup,
  where?: Markup,
): Markup {
  const reversed = signal === 'danger' || signal === 'warning';
  const black = reversed ? { ink: PAGE_INKS.paper, paper: PAGE_INKS.ink } : PAGE_INKS;
  const { letters, ground } = SAFETY_COLOURS[signal];
  const inks = safetyColours ? { ink: letters, paper: ground } : black;
  return el(
    'div',
    { class: `signal ${signal}`, role: 'note' },
    el('strong', {}, signal !== 'notice' && drawn(alertDrawing(inks), 'alert'), word),
    el('p', {}, body),
    where && el('p', { class: 'where' }, where),
  );
}

/** The word cells in the colours of the safety standards, by day and in the dark, on the screen and on paper. */
export function safetyStyles(): string {
  return Object.entries(SAFETY_COLOURS)
    .map(
      ([signal, { ground, letters }]) =>
        `.${signal}>strong{background:${ground};color:${letters};print-color-adjust:exact;-webkit-print-color-adjust:exact}`,
    )
    .join('');
}
