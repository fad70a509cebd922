// Which characters the shipped type has: read from the fonts themselves, so that the check and the print agree.
import { FACES, fontOf } from './type/faces.js';

let known: ReadonlySet<number> | undefined;

/** Tells whether the print can show a character: every face must have it. */
export function isPrintable(codePoint: number): boolean {
  known ??= inEveryFace(FACES.map((face) => fontOf(face).glyphs));
  return known.has(codePoint);
}

function inEveryFace(faces: readonly ReadonlyMap<number, number>[]): ReadonlySet<number> {
  const [first = new Map<number, number>(), ...rest] = faces;
  return new Set([...first.keys()].filter((code) => rest.every((face) => face.has(code))));
}
