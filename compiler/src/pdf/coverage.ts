// Which characters the shipped type has: read from the fonts themselves, so that the check and the print agree.
import { readPackageBytes } from '../package-files.js';

/** The faces that the templates use. A character counts only when every face has it. */
const FACES = ['400Regular', '400Regular_Italic', '600SemiBold', '700Bold', '700Bold_Italic', '800ExtraBold'];

let known: ReadonlySet<number> | undefined;

/** Tells whether the print can show a character. */
export function isPrintable(codePoint: number): boolean {
  known ??= inEveryFace(
    FACES.map((face) => characters(readPackageBytes('fonts', `AtkinsonHyperlegibleNext_${face}.ttf`))),
  );
  return known.has(codePoint);
}

function inEveryFace(faces: readonly ReadonlySet<number>[]): ReadonlySet<number> {
  const [first = new Set<number>(), ...rest] = faces;
  return new Set([...first].filter((code) => rest.every((face) => face.has(code))));
}

/** Code points of a font's character map (OpenType `cmap`, formats 4 and 12). */
export function characters(font: Uint8Array): Set<number> {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
  const cmap = tableOffset(view, 'cmap');
  const found = new Set<number>();
  for (let i = 0; i < view.getUint16(cmap + 2); i++) {
    const subtable = cmap + view.getUint32(cmap + 8 + i * 8);
    const format = view.getUint16(subtable);
    if (format === 4) readSegments(view, subtable, found);
    if (format === 12) readGroups(view, subtable, found);
  }
  return found;
}

function tableOffset(view: DataView, tag: string): number {
  for (let i = 0; i < view.getUint16(4); i++) {
    const entry = 12 + i * 16;
    const name = String.fromCharCode(...[0, 1, 2, 3].map((n) => view.getUint8(entry + n)));
    if (name === tag) return view.getUint32(entry + 8);
  }
  throw new Error(`The font has no ${tag} table`);
}

function readSegments(view: DataView, at: number, found: Set<number>): void {
  const doubled = view.getUint16(at + 6);
  for (let i = 0; i < doubled; i += 2) {
    const end = view.getUint16(at + 14 + i);
    const start = view.getUint16(at + 16 + doubled + i);
    const delta = view.getUint16(at + 16 + 2 * doubled + i);
    const rangeAt = at + 16 + 3 * doubled + i;
    const range = view.getUint16(rangeAt);
    for (let code = start; code <= end && code !== 0xffff; code++) {
      const glyph =
        range === 0 ? (code + delta) & 0xffff : view.getUint16(rangeAt + range + 2 * (code - start));
      if (glyph !== 0) found.add(code);
    }
  }
}

function readGroups(view: DataView, at: number, found: Set<number>): void {
  for (let i = 0; i < view.getUint32(at + 12); i++) {
    const group = at + 16 + i * 12;
    for (let code = view.getUint32(group); code <= view.getUint32(group + 4); code++) found.add(code);
  }
}
