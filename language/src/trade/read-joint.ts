/** Reads a fastener named at the bench in one breath: `M12x1.75 10.9`, `1/2-13 UNC grade 8`, `M10 class 10`. */
import { isClass, readClass, type StrengthClass } from './strength.js';
import { isThread, readThread, type Thread, type ThreadProblem } from './thread.js';

/** A thread with its class, where one was written. */
export interface FastenerNamed {
  readonly thread: Thread;
  readonly class?: StrengthClass;
}

/** The longest leading part that is a thread is the thread, the rest is its class. */
export function readFastener(text: string): FastenerNamed | ThreadProblem {
  const words = text.trim().split(/[\s,]+/);
  let first: ThreadProblem = { problem: 'name a thread, as in M12x1.75 10.9' };
  for (let length = words.length; length > 0; length--) {
    const thread = readThread(words.slice(0, length).join(' '));
    if (!isThread(thread)) {
      if (length === 1) first = thread;
      continue;
    }
    const rest = words.slice(length).join(' ');
    if (rest === '') return { thread };
    const cls = readClass(rest);
    return isClass(cls) ? { thread, class: cls } : cls;
  }
  return first;
}
