// Short ways to a thread and a class in the tests of this folder; both fail loudly on a typing slip.
import {
  isClass,
  isThread,
  readClass,
  readThread,
  type StrengthClass,
  type Thread,
} from '../../language/src/trade/index.js';

export function thr(text: string): Thread {
  const thread = readThread(text);
  if (!isThread(thread)) throw new Error(thread.problem);
  return thread;
}

export function cls(text: string): StrengthClass {
  const found = readClass(text);
  if (!isClass(found)) throw new Error(found.problem);
  return found;
}

export const FT_LBF = 1.3558179483314;
export const IN_LBF = 0.1129848290276167;
export const LBF = 4.4482216152605;
