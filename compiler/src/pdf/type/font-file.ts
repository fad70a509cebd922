// What the widths of a text come from, read from a font file: character map, advance widths, kerning and figures of
// one width (OpenType 1.9: `cmap`, `hmtx`, `GPOS` pair adjustment, `GSUB` single substitution).

export interface FontFile {
  readonly unitsPerEm: number;
  /** Glyph of each code point. */
  readonly glyphs: ReadonlyMap<number, number>;
  readonly advance: (glyph: number) => number;
  /** What a pair is moved together or apart, in font units. */
  readonly kern: (left: number, right: number) => number;
  /** The glyph in figures of one width; the glyph itself where there is none. */
  readonly tabular: (glyph: number) => number;
}

export function readFont(data: Uint8Array): FontFile {
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  const hmtx = tableOffset(view, 'hmtx');
  const full = view.getUint16(tableOffset(view, 'hhea') + 34);
  const pairs = lookups(view, tableOffset(view, 'GPOS'), 'kern', 2);
  const figures = lookups(view, tableOffset(view, 'GSUB'), 'tnum', 1).flat();
  return {
    unitsPerEm: view.getUint16(tableOffset(view, 'head') + 18),
    glyphs: glyphMap(view),
    advance: (glyph) => view.getUint16(hmtx + 4 * Math.min(glyph, full - 1)),
    kern: (left, right) => pairs.reduce((sum, tables) => sum + pairIn(view, tables, left, right), 0),
    tabular: (glyph) => {
      for (const at of figures) {
        const index = coverage(view, at + view.getUint16(at + 2), glyph);
        if (index !== undefined) return substitute(view, at, glyph, index);
      }
      return glyph;
    },
  };
}

/** Code points and glyphs of a font's character map (formats 4 and 12). */
function glyphMap(view: DataView): Map<number, number> {
  const cmap = tableOffset(view, 'cmap');
  const found = new Map<number, number>();
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
    if (tagAt(view, entry) === tag) return view.getUint32(entry + 8);
  }
  throw new Error(`The font has no ${tag} table`);
}

const tagAt = (view: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map((n) => view.getUint8(at + n)));

function readSegments(view: DataView, at: number, found: Map<number, number>): void {
  const doubled = view.getUint16(at + 6);
  for (let i = 0; i < doubled; i += 2) {
    const end = view.getUint16(at + 14 + i);
    const start = view.getUint16(at + 16 + doubled + i);
    const delta = view.getUint16(at + 16 + 2 * doubled + i);
    const rangeAt = at + 16 + 3 * doubled + i;
    const range = view.getUint16(rangeAt);
    for (let code = start; code <= end && code !== 0xffff; code++) {
      const listed = range === 0 ? code : view.getUint16(rangeAt + range + 2 * (code - start));
      const glyph = range !== 0 && listed === 0 ? 0 : (listed + delta) & 0xffff;
      if (glyph !== 0) found.set(code, glyph);
    }
  }
}

function readGroups(view: DataView, at: number, found: Map<number, number>): void {
  for (let i = 0; i < view.getUint32(at + 12); i++) {
    const group = at + 16 + i * 12;
    const start = view.getUint32(group);
    const glyph = view.getUint32(group + 8);
    for (let code = start; code <= view.getUint32(group + 4); code++) found.set(code, glyph + code - start);
  }
}

/** Lookups of a feature that have a type, in their order: the places of their subtables. An extension is followed. */
function lookups(view: DataView, table: number, feature: string, type: number): number[][] {
  const features = table + view.getUint16(table + 6);
  const list = table + view.getUint16(table + 8);
  const chosen = new Set<number>();
  for (let i = 0; i < view.getUint16(features); i++) {
    if (tagAt(view, features + 2 + 6 * i) !== feature) continue;
    const at = features + view.getUint16(features + 6 + 6 * i);
    for (let j = 0; j < view.getUint16(at + 2); j++) chosen.add(view.getUint16(at + 4 + 2 * j));
  }
  return [...chosen]
    .sort((a, b) => a - b)
    .flatMap((index) => {
      const lookup = list + view.getUint16(list + 2 + 2 * index);
      const isExtension = view.getUint16(lookup) === (type === 2 ? 9 : 7);
      const places = Array.from({ length: view.getUint16(lookup + 4) }, (_, i) => {
        const at = lookup + view.getUint16(lookup + 6 + 2 * i);
        return isExtension ? at + view.getUint32(at + 4) : at;
      });
      return isExtension || view.getUint16(lookup) === type ? [places] : [];
    });
}

/** A glyph's place in a coverage table. */
function coverage(view: DataView, at: number, glyph: number): number | undefined {
  const count = view.getUint16(at + 2);
  const wide = view.getUint16(at) === 2;
  for (let low = 0, high = count - 1; low <= high; ) {
    const middle = (low + high) >> 1;
    const entry = at + 4 + middle * (wide ? 6 : 2);
    const start = view.getUint16(entry);
    const end = wide ? view.getUint16(entry + 2) : start;
    if (glyph < start) high = middle - 1;
    else if (glyph > end) low = middle + 1;
    else return wide ? view.getUint16(entry + 4) + glyph - start : middle;
  }
  return undefined;
}

function substitute(view: DataView, at: number, glyph: number, index: number): number {
  return view.getUint16(at) === 1
    ? (glyph + view.getInt16(at + 4)) & 0xffff
    : view.getUint16(at + 6 + 2 * index);
}

/** The first subtable that holds the pair counts. Of a value only the advance of the first glyph is read. */
function pairIn(view: DataView, tables: readonly number[], left: number, right: number): number {
  for (const at of tables) {
    const index = coverage(view, at + view.getUint16(at + 2), left);
    if (index === undefined) continue;
    const [first, second] = [view.getUint16(at + 4), view.getUint16(at + 6)];
    const size = 2 * (bits(first) + bits(second));
    const advance = first & 4 ? 2 * bits(first & 3) : undefined;
    const value = (place: number) => (advance === undefined ? 0 : view.getInt16(place + advance));
    if (view.getUint16(at) === 2) {
      const row = classOf(view, at + view.getUint16(at + 8), left) * view.getUint16(at + 14);
      return value(at + 16 + (row + classOf(view, at + view.getUint16(at + 10), right)) * size);
    }
    const set = at + view.getUint16(at + 10 + 2 * index);
    for (let i = 0; i < view.getUint16(set); i++) {
      const pair = set + 2 + i * (2 + size);
      if (view.getUint16(pair) === right) return value(pair + 2);
    }
  }
  return 0;
}

const bits = (format: number): number => [1, 2, 4, 8, 16, 32, 64, 128].filter((bit) => format & bit).length;

function classOf(view: DataView, at: number, glyph: number): number {
  if (view.getUint16(at) === 1) {
    const index = glyph - view.getUint16(at + 2);
    return index >= 0 && index < view.getUint16(at + 4) ? view.getUint16(at + 6 + 2 * index) : 0;
  }
  for (let low = 0, high = view.getUint16(at + 2) - 1; low <= high; ) {
    const middle = (low + high) >> 1;
    const entry = at + 4 + 6 * middle;
    if (glyph < view.getUint16(entry)) high = middle - 1;
    else if (glyph > view.getUint16(entry + 2)) low = middle + 1;
    else return view.getUint16(entry + 4);
  }
  return 0;
}
