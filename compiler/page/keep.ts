// Progress kept on the device, one entry for each guide, print and revision; and the way back, one change at a time.
import type { Entries, Times } from './state.js';

export interface Kept {
  readonly entries: Entries;
  readonly times: Times;
  readonly signedAt?: number;
}

export const NOTHING_KEPT: Kept = { entries: {}, times: {} };

/** What the store holds, or nothing when it is empty, forbidden or damaged. */
export function readKept(store: Storage | undefined, key: string): Kept {
  try {
    const found: unknown = JSON.parse(store?.getItem(key) ?? 'null');
    if (typeof found !== 'object' || found === null || !('entries' in found) || !('times' in found))
      return NOTHING_KEPT;
    return found as Kept;
  } catch {
    return NOTHING_KEPT;
  }
}

/** Tells whether it could be kept. */
export function writeKept(store: Storage | undefined, key: string, kept: Kept): boolean {
  try {
    if (!store) return false;
    store.setItem(key, JSON.stringify(kept));
    return true;
  } catch {
    return false;
  }
}

/** The device's store; reading the property itself throws where storage is forbidden. */
export function deviceStore(): Storage | undefined {
  try {
    return window.localStorage;
  } catch {
    return undefined;
  }
}
