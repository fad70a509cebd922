// Tells whether a picture file is all there, by its own marks and sums, without decoding it: copies that were cut off are
// the usual damage. What only a decoder can tell, the typesetter tells.
import type { PictureType } from './picture.js';

export function isWhole(type: Exclude<PictureType, 'svg'>, data: Uint8Array): boolean {
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  return WHOLE[type](view);
}

const WHOLE: Readonly<Record<Exclude<PictureType, 'svg'>, (view: DataView) => boolean>> = {
  png: wholePng,
  jpeg: endsJpeg,
  webp: wholeWebp,
};

/** Chunks up to IEND, each with its sum (PNG, ISO/IEC 15948, clause 5). */
function wholePng(view: DataView): boolean {
  let at = 8;
  while (at + 12 <= view.byteLength) {
    const length = view.getUint32(at);
    const sum = at + 8 + length;
    if (sum + 4 > view.byteLength || crc32(view, at + 4, sum) !== view.getUint32(sum)) return false;
    if (view.getUint32(at + 4) === IEND) return true;
    at = sum + 4;
  }
  return false;
}

const IEND = 0x49454e44;

/** The mark of the end, perhaps with padding behind it (JPEG, ISO/IEC 10918-1, annex B). */
function endsJpeg(view: DataView): boolean {
  for (let at = view.byteLength - 2; at > 0; at--) if (view.getUint16(at) === 0xffd9) return true;
  return false;
}

/** The length that the first bytes give (WebP, RFC 9649, section 2.4). */
function wholeWebp(view: DataView): boolean {
  return view.getUint32(4, true) + 8 <= view.byteLength;
}

/** The sum of a PNG chunk (ISO/IEC 15948, annex D). */
function crc32(view: DataView, start: number, end: number): number {
  let crc = 0xffffffff;
  for (let at = start; at < end; at++) crc = (TABLE[(crc ^ view.getUint8(at)) & 255] ?? 0) ^ (crc >>> 8);
  return ~crc >>> 0;
}

const TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let value = n;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value;
});
