// What the print renderers share while one document is turned into typesetter source.
import type { Language } from '@baywright/language';
import type { Picture } from '../document/picture.js';
import type { Words } from '../document/words.js';
import type { Frame } from './steps/frame.js';

export interface PrintContext {
  readonly words: Words;
  /** The title, or the number where the title is empty: a page without a heading cannot be tagged. */
  readonly title: string;
  /** Of a title without a translation. */
  readonly titleLanguage?: Language | undefined;
  /** A training print tells why. */
  readonly training: boolean;
  readonly safetyColours: boolean;
  readonly frame: Frame;
  /** Width of what stands by itself: of the text, or beside the column for notes. Millimetres. */
  readonly column: number;
  /** The record is a part of the guide, and no sheet of its own. */
  readonly isPart: boolean;
  /** Registers the picture's bytes and gives the path that the source names; none for one that cannot be set. */
  readonly addPicture: (picture: Picture) => string | undefined;
}
