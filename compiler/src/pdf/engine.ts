// The typesetter behind a narrow door: source in, PDF out. It runs in child processes, each with one job at a time. A
// process is replaced when its memory has grown past a limit, so that a library of any size prints in bounded memory.
import { type ChildProcess, fork } from 'node:child_process';
import { packagePath } from '../package-files.js';
import type { PrintSource } from './source.js';

interface TypesetJob extends PrintSource {
  readonly standard: string;
  /** Seconds since 1970. */
  readonly timestamp: number;
}

export interface Typeset {
  readonly pdf: Uint8Array;
  readonly pages: number;
  readonly warnings: readonly string[];
}

export interface Engine {
  /** Sets one job; it waits while all processes are at work. Rejects with {@link TypesetError} when the source is refused, with {@link TypesetterMissing} where there is none. */
  readonly typeset: (job: TypesetJob) => Promise<Typeset>;
  readonly close: () => void;
}

/** The typesetter refused a source: its own words, if it had any. */
export class TypesetError extends Error {
  constructor(problems: readonly string[]) {
    super(
      problems.filter((each) => each.trim() !== '').join('\n') ||
        'The typesetter refused this guide without a reason.',
    );
    this.name = 'TypesetError';
  }
}

/** There is no typesetter on this machine: its package is missing, or has no part for this system. */
export class TypesetterMissing extends Error {
  constructor(cause: string) {
    super(
      `no PDF can be made: the typesetter does not start here (${cause}). Install Baywright anew, or make pages alone with --format html`,
    );
    this.name = 'TypesetterMissing';
  }
}

/** What a process runs. */
const SCRIPT = packagePath('templates', 'pdf', 'typesetter.mjs');

/** Resident memory, in bytes, at which a process is replaced after its job. */
const MEMORY_LIMIT = 280 * 1024 * 1024;

/** Starts that many processes at once, so that they get ready while the first guide is made. */
export function openEngine({ processes = 1, memoryLimit = MEMORY_LIMIT, script = SCRIPT } = {}): Engine {
  const setters = Array.from({ length: processes }, () => openSetter(memoryLimit, script));
  return {
    typeset: (job) => setters.reduce((a, b) => (b.waiting() < a.waiting() ? b : a)).typeset(job),
    close: () => {
      for (const setter of setters) setter.close();
    },
  };
}

interface Setter extends Engine {
  /** Jobs given to it and not yet done. */
  readonly waiting: () => number;
}

function openSetter(memoryLimit: number, script: string): Setter {
  let child: ChildProcess | undefined = start(script);
  let queue: Promise<unknown> = Promise.resolve();
  let waiting = 0;

  const run = async (job: TypesetJob): Promise<Typeset> => {
    // One that ended by itself while nothing was asked of it is not asked.
    if (child?.connected !== true) child = start(script);
    const answer = await ask(child, job);
    if ('lost' in answer || answer.memory > memoryLimit) stop();
    if ('lost' in answer) throw new TypesetError([answer.lost]);
    if (answer.missing !== undefined) throw new TypesetterMissing(answer.missing);
    if (answer.problems) throw new TypesetError(answer.problems);
    const { pdf = new Uint8Array(), pages = 0, warnings = [] } = answer;
    return { pdf, pages, warnings };
  };
  const stop = () => {
    child?.kill();
    child = undefined;
  };
  return {
    waiting: () => waiting,
    typeset: (job) => {
      waiting += 1;
      const result = queue
        .then(() => run(job))
        .finally(() => {
          waiting -= 1;
        });
      queue = result.catch(() => undefined);
      return result;
    },
    close: stop,
  };
}

interface Answer {
  readonly memory: number;
  /** Why there is no typesetter. */
  readonly missing?: string;
  readonly problems?: readonly string[];
  readonly pdf?: Uint8Array;
  readonly pages?: number;
  readonly warnings?: readonly string[];
}

function start(script: string): ChildProcess {
  const child = fork(script, [packagePath('templates'), packagePath('fonts')], {
    serialization: 'advanced',
    // Nothing of the parent's flags: a debugger or a loader would start in the child as well.
    execArgv: ['--expose-gc'],
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
  });
  // What goes wrong before a guide is waiting is told when one is.
  child.on('error', () => {});
  // An idle typesetter does not keep the program from ending.
  idle(child, true);
  return child;
}

function idle(child: ChildProcess, isIdle: boolean): void {
  const channel = child.channel;
  if (isIdle) {
    child.unref();
    channel?.unref();
  } else {
    child.ref();
    channel?.ref();
  }
}

function ask(child: ChildProcess, job: TypesetJob): Promise<Answer | { readonly lost: string }> {
  return new Promise((resolve) => {
    const finish = (answer: Answer | { readonly lost: string }) => {
      child.off('message', onMessage);
      child.off('exit', onExit);
      child.off('error', onError);
      idle(child, true);
      resolve(answer);
    };
    const onMessage = (message: unknown) => finish(message as Answer);
    const onExit = () => finish({ lost: 'The typesetter stopped while it worked on this guide.' });
    const onError = (error: Error) =>
      finish({ lost: `The typesetter could not be started: ${error.message}` });
    child.on('message', onMessage);
    child.on('exit', onExit);
    child.on('error', onError);
    idle(child, false);
    child.send(job);
  });
}
