// A picture of a guide, read, checked and cleaned: the bytes go into the page as they are.
import type { SourceRef } from './inline.js';

export type PictureType = 'png' | 'jpeg' | 'webp' | 'svg';

export interface Picture {
  readonly type: PictureType;
  readonly data: Uint8Array;
  /** Size in picture units, for the shape of the frame. */
  readonly width: number;
  readonly height: number;
  /** What it shows, in words. */
  readonly alt: string;
  readonly caption?: string;
  /** The file as it was named, and the line that names it. */
  readonly name?: string;
  readonly source?: SourceRef;
}
