// What is kept of a file from one run to the next.
import type { Finding, LibraryPart } from '@baywright/language';

/** What a file says to the others, and everything outside the program that a second look at it could find otherwise. */
export interface KeptFile {
  readonly path: string;
  /** What its file was known by when it was read: {@link FileFact}. */
  readonly mark?: string;
  readonly number?: string;
  readonly part: LibraryPart;
  readonly rests: Rests;
}

/** What was found in a file. */
export interface CheckedFile extends KeptFile {
  readonly findings: readonly Finding[];
}

export interface Rests {
  /** Hash of each file read; empty where there is none. */
  readonly files: Readonly<Record<string, string>>;
  /** The path that each procedure number leads to; empty where it leads nowhere. */
  readonly numbers: Readonly<Record<string, string>>;
  /** Whether there is a file, for pictures. */
  readonly pictures: Readonly<Record<string, boolean>>;
  /** What is in the pictures, as hashes, where an issue is compared with them. */
  readonly shown?: Readonly<Record<string, string>>;
  /** The newest issue of its number, where that was asked. */
  readonly issue?: number;
  /** The day, where a review may fall due. */
  readonly day?: string;
}

/** What is known of a file that need not be opened: nothing of it changed since. */
export interface FileFact {
  readonly mark: string;
  readonly hash: string;
  /** The number it opens with. */
  readonly number?: string;
}
