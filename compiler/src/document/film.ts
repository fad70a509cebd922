// A film of a guide. The page plays it from its own bytes; print has its words.

type FilmType = 'webm' | 'mp4';

export interface Film {
  readonly type: FilmType;
  readonly data: Uint8Array;
  /** Where what is shown begins, seconds. */
  readonly start: number;
}

/** Films larger than this would make every guide slow to open: they are named and stay where they are. Common practice. */
const LARGEST_BYTES = 8 * 1024 * 1024;

/** Undefined for a file that is no film, or too large to go into a page. */
export function readFilm(data: Uint8Array, start: number): Film | undefined {
  const type = data.length > LARGEST_BYTES ? undefined : filmType(data);
  return type && { type, data, start };
}

/** By what the file begins with: Matroska (RFC 9559) for WebM, `ftyp` of ISO 14496-12 for MP4. */
function filmType(data: Uint8Array): FilmType | undefined {
  const starts = (bytes: readonly number[], at = 0) => bytes.every((byte, i) => data[at + i] === byte);
  if (starts([0x1a, 0x45, 0xdf, 0xa3])) return 'webm';
  return starts([0x66, 0x74, 0x79, 0x70], 4) ? 'mp4' : undefined;
}
