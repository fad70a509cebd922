/** The scripts of the pages by file name, bundled from their sources. */
export function pageScripts(): Promise<Record<string, string>>;
