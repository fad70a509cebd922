// The process that a typesetter runs in. One can be started before the program itself is read, which takes as long.
import { type ChildProcess, fork } from 'node:child_process';
import { packagePath } from '../package-files.js';

/** One that was started ahead and waits for its first job. */
let ahead: ChildProcess | undefined;

/** The process of a typesetter, which gets ready by itself: the one started ahead, if it was not given out yet. */
export function typesetterProcess(script?: string): ChildProcess {
  if (script !== undefined || ahead?.connected !== true) return startTypesetter(script);
  const child = ahead;
  ahead = undefined;
  return child;
}

/** Hands over one that was started ahead. If nothing is printed in the end, it goes with the program. */
export function lendTypesetter(child: ChildProcess): void {
  ahead = child;
  process.once('exit', () => ahead?.kill());
}

/** Starts one; `script` is what it runs. */
export function startTypesetter(script = packagePath('templates', 'pdf', 'typesetter.mjs')): ChildProcess {
  const child = fork(script, [packagePath('templates'), packagePath('fonts')], {
    serialization: 'advanced',
    // Nothing of the parent's flags: a debugger or a loader would start in the child as well.
    execArgv: [],
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
  });
  // What goes wrong before a guide is waiting is told when one is.
  child.on('error', () => {});
  keepOpen(child, false);
  return child;
}

/** An idle typesetter does not keep the program from ending. */
export function keepOpen(child: ChildProcess, isAtWork: boolean): void {
  if (isAtWork) {
    child.ref();
    child.channel?.ref();
  } else {
    child.unref();
    child.channel?.unref();
  }
}
