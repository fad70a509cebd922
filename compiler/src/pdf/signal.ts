// The safety alert symbol for a signal word in print: reversed on the black cells of DANGER and WARNING, never with
// NOTICE (ANSI Z535.6). In colour it has the letters' colour.
import type { Signal } from '@baywright/language';
import { asSvg, PRINT_INKS } from '../document/drawing/drawing.js';
import { alertDrawing } from '../document/drawing/symbols.js';
import { SAFETY_COLOURS } from '../safety-colours.js';
import type { PrintContext } from './context.js';

export function triangle(signal: Signal, { safetyColours }: PrintContext): string | undefined {
  if (signal === 'notice') return undefined;
  if (safetyColours) {
    const { ground, letters } = SAFETY_COLOURS[signal];
    return asSvg(alertDrawing({ ink: letters, paper: ground }));
  }
  const reversed = signal === 'danger' || signal === 'warning';
  return asSvg(alertDrawing(reversed ? { ink: 'white', paper: 'black' } : PRINT_INKS));
}
