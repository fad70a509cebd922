// The safety alert symbol for a signal word in print: reversed on the black cells of DANGER and WARNING, never with
// NOTICE (ANSI Z535.6).
import type { Signal } from '@baywright/language';
import { asSvg, PRINT_INKS } from '../document/drawing/drawing.js';
import { alertDrawing } from '../document/drawing/symbols.js';

export function triangle(signal: Signal): string | undefined {
  if (signal === 'notice') return undefined;
  const reversed = signal === 'danger' || signal === 'warning';
  return asSvg(alertDrawing(reversed ? { ink: 'white', paper: 'black' } : PRINT_INKS));
}
