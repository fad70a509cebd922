// How large a picture of pixels is by its own header, as it is to be seen: photographs (JPEG) are often stored lying on a
// side, with a note which way is up that the typesetter and all browsers heed.
import { imageSize } from 'image-size';

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Undefined where the header cannot be read. */
export function rasterSize(data: Uint8Array): Size | undefined {
  try {
    const { width, height, orientation = 1 } = imageSize(data);
    if (!(width > 0 && height > 0)) return undefined;
    return orientation >= 5 && orientation <= 8 ? { width: height, height: width } : { width, height };
  } catch {
    return undefined;
  }
}

/** Its pixels are laid out in memory to be set, however small the file: four bytes each. Five times what most telephones take. */
const MOST_PIXELS = 60_000_000;

/** What is wrong with so many pixels, to follow the name of the file; undefined where it is fine. */
export function pixelProblem({ width, height }: Size): string | undefined {
  const pixels = width * height;
  return pixels > MOST_PIXELS ? `has ${Math.round(pixels / 1e6)} million pixels; save it smaller` : undefined;
}
