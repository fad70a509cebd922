/** The scripts and styles of the pages by file name, bundled from their sources. */
export function pageFiles(): Promise<Record<string, string>>;
