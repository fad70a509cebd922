/** The cached workbench's start file. */
export const SERVER_ENTRY: string;
/** The files of the browser-only workbench. */
export const BROWSER_DIST: string;
export const CACHE: string;
/** Fetches and builds what is missing; does nothing when the cache is complete. */
export function fetchWorkbench(): void;
