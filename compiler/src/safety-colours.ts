// The colours of the safety standards for signal words and for signs of protection. A shop switches them on; black
// carries the meaning without them, so that a grey printer loses nothing.
import type { Signal } from '@baywright/language';
import type { Inks } from './document/drawing/drawing.js';

/** Ground and letters of a word cell, as sRGB. */
export interface CellColours {
  readonly ground: string;
  readonly letters: string;
}

// Which colour belongs to which word: ANSI Z535.4 and Z535.6 (red with white letters, orange and yellow with black
// ones, blue with white ones), from memory. Safety green marks first aid and exits, which guides have none of.
// The values: screen equivalents of the chips of FED-STD-595 for safety red 11120, orange 12300, yellow 13591 and blue
// 15092, as the public table “Colors FS 595” of w3schools.com gives them; it calls them approximations.
// Letters stand out from their ground by 5.9:1 at least (WCAG 2.2 asks for 4.5:1).
const RED = '#BD1E24';
const ORANGE = '#E97600';
const YELLOW = '#F6C700';
const BLUE = '#0067A7';

export const SAFETY_COLOURS: Readonly<Record<Signal, CellColours>> = {
  danger: { ground: RED, letters: '#FFFFFF' },
  warning: { ground: ORANGE, letters: '#000000' },
  caution: { ground: YELLOW, letters: '#000000' },
  notice: { ground: BLUE, letters: '#FFFFFF' },
};

/** Mandatory signs: a white figure on safety blue (ISO 3864-4 and ISO 7010, from memory). */
export const MANDATORY_INKS: Inks = { ink: BLUE, paper: '#FFFFFF' };
