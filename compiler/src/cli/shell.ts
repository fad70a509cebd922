// What a command may ask of the world: files, streams, the clock. Tests hand in a world of their own.
/** A place that text goes to. */
export interface Stream {
  write(text: string): void;
  readonly isTerminal: boolean;
  /** Characters across; 80 where nothing is known. */
  readonly columns: number;
}

/** The text of a file, or why it cannot be had, in words that follow the file's name. */
export type Reading = { readonly text: string } | { readonly problem: string };

export interface Entry {
  readonly name: string;
  readonly kind: 'file' | 'folder' | 'other';
}

/** Paths handed in and out are absolute with forward slashes, except where `resolve` makes them so. */
export interface Shell {
  /** The current folder. */
  readonly folder: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly out: Stream;
  readonly err: Stream;
  now(): Date;
  /** An absolute path from one as typed. */
  resolve(path: string): string;
  kind(path: string): 'file' | 'folder' | undefined;
  /** UTF-8 text without its byte order mark; other bytes are a problem, not an exception. */
  read(path: string): Reading;
  /** The bytes of a file, undefined when it cannot be had or is larger than any text or picture here may be. */
  bytes(path: string): Uint8Array | undefined;
  /** What tells a file from the same one changed, without opening it; absent where that cannot be known. */
  seen?(path: string): Seen | undefined;
  readStdin(): Promise<Reading>;
  /** What a folder holds, by name. Links to folders are `other`, so that a loop of links cannot trap a walk. */
  list(folder: string): readonly Entry[] | { readonly problem: string };
  /** Starts another thread on work that is plain data; absent where there are none to spare. */
  startThread?(work: unknown): OtherThread;
  /** How many threads may work at once, this one included. */
  readonly threads: number;
  /**
   * Writes a file whole or not at all, and makes the folders above it. What `canBeMadeAgain`, such as a guide, is not
   * waited for until it is on the drive: a thousand waits cost more than a thousand guides.
   */
  write(path: string, data: string | Uint8Array, canBeMadeAgain?: boolean): void;
  /** Deletes a file. */
  remove(path: string): void;
  /** Makes a folder with all its files, or nothing; refused where the folder is there already. */
  writeFolder(path: string, files: ReadonlyMap<string, string | Uint8Array>): void;
  /** Folders in which findings may be kept, the best first; absent where nothing may be kept. */
  cacheFolders?(root: string, hasSettings: boolean): readonly string[];
  /** Tells this build of the program from every other. */
  readonly stamp: string;
  /** SHA-256 as lower-case hexadecimal digits. */
  hash(data: string | Uint8Array): string;
  /** What git prints for these arguments, or why it cannot be asked. */
  git(folder: string, args: readonly string[]): Reading;
  /** The bytes of a file as git has it, by `REVISION:path`; undefined where it has none, or a larger one than is read. */
  gitFile(folder: string, at: string): Uint8Array | undefined;
  /**
   * Calls back with the paths of files that changed below a folder, and of folders that came or went with a slash at
   * the end, until `stop`. `gone` settles when there is no such folder any more. Absent where nothing can be watched.
   */
  watch?(
    folder: string,
    changed: (paths: readonly string[]) => void,
  ): { stop(): void; readonly gone: Promise<void> };
}

export interface Seen {
  /** Size, times and place on the drive: another one after every change. */
  readonly mark: string;
  /** When it was changed last, in milliseconds since 1970. */
  readonly changed: number;
}

/** A thread at work. */
export interface OtherThread {
  say(message: unknown): void;
  /** The next thing it says. Rejects when it cannot go on. */
  heard(): Promise<unknown>;
  end(): void;
}

/** A failure whose message says all that the user needs: printed without a trace, exit code 2. */
export class CannotRun extends Error {}

/**
 * What a terminal is shown: text of a file may hold controls that steer it or turn its lines round. They show as a sign;
 * the program's own colours and the clearing of its line of progress pass.
 */
export const forTerminal = (text: string): string => text.replace(STEERING, '\uFFFD');

const STEERING =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001a\u001c-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]|\u001b(?!\[(?:\d{1,3}m|K))/g;

/** The largest file that is read. A procedure of a thousand steps is a hundredth of it. */
export const LARGEST_FILE = 32 * 1024 * 1024;

/** Made once: a thousand of them cost more than what they read. */
const UTF_8 = new TextDecoder('utf-8', { fatal: true });

/** Bytes as text, or why they are not a text. Pure, so that every shell says the same. */
export function decodeText(bytes: Uint8Array): Reading {
  if (bytes.length > LARGEST_FILE) return tooLarge(bytes.length);
  const [a, b] = bytes;
  if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff))
    return { problem: 'is UTF-16 text; save it as UTF-8' };
  if (bytes.includes(0)) return { problem: 'is not a text file (it holds zero bytes)' };
  try {
    return { text: UTF_8.decode(bytes) };
  } catch {
    return { problem: 'is not UTF-8 text; save it as UTF-8' };
  }
}

/** The answer for a file of that many bytes, over the limit. */
export function tooLarge(size: number): { readonly problem: string } {
  return { problem: `holds ${Math.round(size / 1024 / 1024)} MB; nothing over 32 MB is read` };
}
