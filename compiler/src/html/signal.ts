// Safety messages on the page (signal words of ANSI Z535.6): word cell, symbol but for NOTICE, message. The frame and
// the reversed cell tell the words apart without colour.
import type { Signal } from '@baywright/language';
import { alertDrawing } from '../document/drawing/symbols.js';
import { drawn, PAGE_INKS } from './drawn.js';
import { el, type Markup } from './markup.js';

export function panelMarkup(signal: Signal, word: string, body: Markup, where?: Markup): Markup {
  const reversed = signal === 'danger' || signal === 'warning';
  const inks = reversed ? { ink: PAGE_INKS.paper, paper: PAGE_INKS.ink } : PAGE_INKS;
  return el(
    'div',
    { class: `signal ${signal}`, role: 'note' },
    el('strong', {}, signal !== 'notice' && drawn(alertDrawing(inks), 'alert'), word),
    el('p', {}, body),
    where && el('p', { class: 'where' }, where),
  );
}
