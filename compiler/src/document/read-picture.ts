// Reads a picture file for a guide: what kind it is by its own bytes, how large, and, for drawings, cleaned.
import { cleanSvg } from './clean-svg.js';
import type { Picture, PictureType } from './picture.js';
import { pixelProblem, rasterSize, type Size } from './raster-size.js';
import { wayUp } from './way-up.js';
import { isWhole } from './whole-picture.js';

export type ReadPicture =
  | { readonly picture: Picture; readonly warning?: string }
  /** What is wrong with the file, to follow its name: `is not a picture`. */
  | { readonly problem: string };

/** Pictures larger than this would make every guide slow to open. Common practice; no source. */
const LARGEST_BYTES = 8 * 1024 * 1024;

/** A line and no picture: on a page it would be a hair. Common practice; no source. */
const LONGEST_SHAPE = 40;

/** `data` is the file's content; `alt` says what the picture shows. PNG, JPEG, WebP and SVG are understood. */
export function readPicture(data: Uint8Array, alt: string, caption?: string): ReadPicture {
  if (data.length > LARGEST_BYTES) return { problem: 'is larger than 8 MB; save it smaller' };
  const words = { alt, ...(caption === undefined ? {} : { caption }) };
  const type = pictureType(data);
  if (!type) return { problem: 'is not a PNG, JPEG, WebP or SVG picture' };
  if (type !== 'svg') {
    const size = rasterSize(data);
    if (size && !isWhole(type, data))
      return { problem: 'is damaged: the file is not whole; copy or save it again' };
    if (!size) return { problem: 'is damaged: its size cannot be read' };
    if (type !== 'jpeg' && (wayUp(data) ?? 1) !== 1)
      return { problem: 'is stored turned, and not every screen turns it back; turn it and save it again' };
    const tooMany = pixelProblem(size);
    if (tooMany !== undefined) return { problem: tooMany };
    return shapeProblem(size) ?? { picture: { type, data, ...size, ...words } };
  }
  const cleaned = cleanSvg(new TextDecoder().decode(data));
  if ('problem' in cleaned) return cleaned;
  const { svg, width, height, removed } = cleaned;
  const misshapen = shapeProblem(cleaned);
  if (misshapen) return misshapen;
  const picture = { type, data: new TextEncoder().encode(svg), width, height, ...words };
  return removed.length === 0
    ? { picture }
    : { picture, warning: `holds what a picture in a guide may not: ${removed.join(', ')}; it was left out` };
}

function shapeProblem({ width, height }: Size): { readonly problem: string } | undefined {
  if (Math.max(width / height, height / width) <= LONGEST_SHAPE) return undefined;
  const [long, way] = width > height ? [width / height, 'wide'] : [height / width, 'high'];
  return {
    problem: `is ${Math.round(long)} times as ${way} as it is ${way === 'wide' ? 'high' : 'wide'}; cut it to what is to be seen`,
  };
}

function pictureType(data: Uint8Array): PictureType | undefined {
  const starts = (bytes: readonly number[], at = 0) => bytes.every((byte, i) => data[at + i] === byte);
  if (starts([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return 'png';
  if (starts([0xff, 0xd8, 0xff])) return 'jpeg';
  if (starts([0x52, 0x49, 0x46, 0x46]) && starts([0x57, 0x45, 0x42, 0x50], 8)) return 'webp';
  return /^\s*(?:\uFEFF)?\s*<(?:\?xml|svg|!--|!DOCTYPE)/i.test(
    new TextDecoder().decode(data.subarray(0, 256)),
  )
    ? 'svg'
    : undefined;
}
