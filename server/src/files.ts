// Where the server finds files it was not handed by the editor. Node reads the disk; a worker asks the client
// (`baywright/readFile`, `baywright/listFiles`); tests keep texts in memory.

export interface Files {
  /** Text of a file, undefined when there is none or it cannot be read. */
  read(uri: string): Promise<string | undefined>;
  /** Bytes of a file as base64, for pictures. */
  readBase64(uri: string): Promise<string | undefined>;
  /** Whether there is a file of any kind, for pictures; absent where it cannot be told at once. */
  exists?(uri: string): boolean;
  /** A picture came, went or changed; absent where {@link exists} looks by itself. */
  noticed?(uri: string): Promise<void>;
  /**
   * URIs of the `.bay` files and settings files in a folder, hidden folders and `node_modules` left out. `deep` goes
   * into the folders below.
   */
  list(folder: string, deep: boolean): Promise<readonly string[]>;
}

/** Files that are kept in memory: for tests and for clients without a file system. */
export function memoryFiles(texts: ReadonlyMap<string, string>): Files {
  return {
    read: async (uri) => texts.get(uri),
    readBase64: async () => undefined,
    list: async (folder, deep) =>
      [...texts.keys()].filter(
        (uri) => uri.startsWith(folder) && isOurs(uri) && (deep || !uri.slice(folder.length).includes('/')),
      ),
  };
}

/** Whether a file is one the language reads. */
export function isOurs(uri: string): boolean {
  return uri.endsWith('.bay') || uri.endsWith('/baywright.json');
}

/** How the names of files end that procedures show. */
export const PICTURES: readonly string[] = [
  '.png',
  '.jpg',
  '.jpeg',
  '.svg',
  '.webp',
  '.gif',
  '.mp4',
  '.webm',
];

/** Whether a file is one that procedures show. */
export function isPicture(uri: string): boolean {
  const name = uri.toLowerCase();
  return PICTURES.some((ending) => name.endsWith(ending));
}

/** Folders that are never looked into. */
export function isHidden(name: string): boolean {
  return name.startsWith('.') || name === 'node_modules';
}
