// The typesetter behind a narrow door: source in, PDF out. It runs in a child process, one job at a time, and is
// replaced when its memory has grown past a limit, so that a library of any size prints in bounded memory.
import { type ChildProcess, fork } from 'node:child_process';
import { packagePath } from '../package-files.js';
import type { PrintSource } from './source.js';

export interface TypesetJob extends PrintSource {
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
  /** Sets one job. Jobs wait for each other. Rejects with {@link TypesetError} when the source is refused. */
  readonly typeset: (job: TypesetJob) => Promise<Typeset>;
  readonly close: () => void;
}

/** The typesetter refused a source; `problems` are its own words. */
export class TypesetError extends Error {
  constructor(readonly problems: readonly string[]) {
    super(problems.join('\n'));
    this.name = 'TypesetError';
  }
}

/** Resident memory, in bytes, at which the process is replaced after its job. */
const MEMORY_LIMIT = 280 * 1024 * 1024;

export function openEngine(memoryLimit = MEMORY_LIMIT): Engine {
  let child: ChildProcess | undefined;
  let queue: Promise<unknown> = Promise.resolve();

  const run = async (job: TypesetJob): Promise<Typeset> => {
    child ??= start();
    const answer = await ask(child, job);
    if ('lost' in answer || answer.memory > memoryLimit) stop();
    if ('lost' in answer) throw new TypesetError([answer.lost]);
    if (answer.problems) throw new TypesetError(answer.problems);
    const { pdf = new Uint8Array(), pages = 0, warnings = [] } = answer;
    return { pdf, pages, warnings };
  };
  const stop = () => {
    child?.kill();
    child = undefined;
  };
  return {
    typeset: (job) => {
      const result = queue.then(() => run(job));
      queue = result.catch(() => undefined);
      return result;
    },
    close: stop,
  };
}

interface Answer {
  readonly memory: number;
  readonly problems?: readonly string[];
  readonly pdf?: Uint8Array;
  readonly pages?: number;
  readonly warnings?: readonly string[];
}

function start(): ChildProcess {
  const child = fork(
    packagePath('templates', 'pdf', 'typesetter.mjs'),
    [packagePath('templates'), packagePath('fonts')],
    {
      serialization: 'advanced',
      // Nothing of the parent's flags: a debugger or a loader would start in the child as well.
      execArgv: [],
      stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    },
  );
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
