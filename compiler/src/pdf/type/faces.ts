// The faces of the shipped type, and how wide a text is in each.
import { readPackageBytes } from '../../package-files.js';
import { type FontFile, readFont } from './font-file.js';

export const FACES = [
  '400Regular',
  '400Regular_Italic',
  '600SemiBold',
  '700Bold',
  '700Bold_Italic',
  '800ExtraBold',
] as const;
export type FaceName = (typeof FACES)[number];

/** The face that a weight is set in: the nearest that is there. `strong` adds 300 to the weight around it. */
export function faceOf(weight: number, italic = false): FaceName {
  if (italic) return weight < 550 ? '400Regular_Italic' : '700Bold_Italic';
  if (weight < 500) return '400Regular';
  return weight < 650 ? '600SemiBold' : weight < 750 ? '700Bold' : '800ExtraBold';
}

/** Height of capitals, the height of a line of text, as a share of the size. The same in every face. */
export const CAPITAL = 0.668;
/** Room between two lines, as a share of the size. */
const LEADING = 0.52;
/** A printer's point in millimetres. */
export const POINT = 25.4 / 72;

interface Face {
  readonly font: FontFile;
  /** Width of a character after another, in thousandths of the size; by both code points. */
  readonly known: Map<number, number>;
  /** Widths of words, as a share of the size; figures of one width apart. */
  readonly words: readonly [Map<string, number>, Map<string, number>];
}

const faces = new Map<string, Face>();

export function fontOf(name: FaceName): FontFile {
  return faceNamed(name).font;
}

function faceNamed(name: FaceName): Face {
  let face = faces.get(name);
  if (!face) {
    face = {
      font: readFont(readPackageBytes('fonts', `AtkinsonHyperlegibleNext_${name}.ttf`)),
      known: new Map(),
      words: [new Map(), new Map()],
    };
    faces.set(name, face);
  }
  return face;
}

/** How far a character moves the pen on when it follows another (0 for none), as a share of the size. */
export function stepWidth(name: FaceName, before: number, code: number, tabular: boolean): number {
  const face = faceNamed(name);
  const key = (before * 0x20000 + code) * 2 + (tabular ? 1 : 0);
  let width = face.known.get(key);
  if (width === undefined) {
    const { font } = face;
    const glyph = (point: number) => {
      const plain = font.glyphs.get(point) ?? 0;
      return tabular ? font.tabular(plain) : plain;
    };
    const moved = before === 0 ? 0 : font.kern(glyph(before), glyph(code));
    width = isInvisible(code) ? 0 : (font.advance(glyph(code)) + moved) / font.unitsPerEm;
    face.known.set(key, width);
  }
  return width;
}

const isInvisible = (code: number): boolean => code === 0x200b;

/** More words than a shop uses: then they are forgotten, so that memory stays bounded. */
const MOST_WORDS = 20_000;

/** Width as a share of the size. */
export function wordWidth(word: string, name: FaceName, tabular: boolean): number {
  const known = faceNamed(name).words[tabular ? 1 : 0];
  let width = known.get(word);
  if (width === undefined) {
    width = 0;
    let before = 0;
    for (const character of word) {
      const code = character.codePointAt(0) ?? 0;
      width += stepWidth(name, before, code, tabular);
      before = code;
    }
    if (known.size >= MOST_WORDS) known.clear();
    known.set(word, width);
  }
  return width;
}

/** Millimetres. */
export function widthOf(text: string, name: FaceName, size: number, tabular = false): number {
  return wordWidth(text, name, tabular) * size * POINT;
}

/** Height of so many lines of a size in points, in millimetres: from the capitals of the first to the foot of the last. */
export function linesHigh(count: number, size: number): number {
  return count === 0 ? 0 : (count * CAPITAL + (count - 1) * LEADING) * size * POINT;
}
