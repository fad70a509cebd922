// The typesetter behind a narrow door: source in, PDF out. It runs in child processes. Each has its next job at hand when it
// is done with one, because the program may be busy then. A process is replaced when its memory has grown past a limit, so
// that a library of any size prints in bounded memory.
import type { PrintSource } from './source.js';
import { keepOpen, typesetterProcess } from './typesetter-process.js';

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
  /** Sets one job; it waits while its process is at work. Rejects with {@link TypesetError} when the source is refused, with {@link TypesetterMissing} where there is none. */
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

const STOPPED = 'The typesetter stopped while it worked on this guide.';

const ENDLESS = 'The typesetter did not come to an end with this guide: look at the pictures it shows.';

/** Milliseconds given to one guide. The longest takes some seconds; what takes so long is a drawing without end. */
const LONGEST = 3 * 60 * 1000;

/** Resident memory, in bytes, at which a process gets no more jobs and another takes its place. */
const MEMORY_LIMIT = 180 * 1024 * 1024;

interface EngineOptions {
  readonly processes?: number;
  readonly memoryLimit?: number;
  /** Milliseconds given to one guide. */
  readonly longest?: number;
  /** What a process runs, where it is not the typesetter. */
  readonly script?: string | undefined;
}

/** Starts that many processes at once, so that they get ready while the first guide is made. */
export function openEngine({
  processes = 1,
  memoryLimit = MEMORY_LIMIT,
  longest = LONGEST,
  script,
}: EngineOptions = {}): Engine {
  const setters = Array.from({ length: processes }, () => openSetter({ memoryLimit, longest }, script));
  return {
    typeset: (job) => setters.reduce((a, b) => (b.waiting() < a.waiting() ? b : a)).typeset(job),
    close: () => {
      for (const setter of setters) setter.close();
    },
  };
}

type Limits = Required<Pick<EngineOptions, 'memoryLimit' | 'longest'>>;

interface Setter extends Engine {
  /** Jobs given to it and not yet done. */
  readonly waiting: () => number;
}

/** One process after the other. */
function openSetter(limits: Limits, script: string | undefined): Setter {
  const all = new Set<Running>();
  let current: Running | undefined = start();

  function start(): Running {
    const one = openProcess(limits, script, (left) => {
      all.delete(one);
      for (const given of left) give(given);
    });
    all.add(one);
    return one;
  }
  function give(given: Given): void {
    if (current?.isOpen() !== true) current = start();
    current.give(given);
  }
  return {
    waiting: () => [...all].reduce((sum, one) => sum + one.waiting(), 0),
    typeset: (job) => new Promise((resolve, reject) => give({ job, resolve, reject })),
    close: () => {
      for (const one of all) one.close();
      current = undefined;
    },
  };
}

interface Given {
  readonly job: TypesetJob;
  readonly resolve: (typeset: Typeset) => void;
  readonly reject: (error: Error) => void;
}

interface Running {
  readonly give: (given: Given) => void;
  readonly waiting: () => number;
  /** Whether it takes more jobs. */
  readonly isOpen: () => boolean;
  readonly close: () => void;
}

/** `gone` is called with the jobs that a process was given and did not come to. */
function openProcess(
  { memoryLimit, longest }: Limits,
  script: string | undefined,
  gone: (left: readonly Given[]) => void,
): Running {
  const child = typesetterProcess(script);
  const given: Given[] = [];
  let isRetired = false;
  let clock: NodeJS.Timeout | undefined;

  /** The first job is the one at work. */
  const watch = (): void => {
    clearTimeout(clock);
    if (given.length === 0) return;
    clock = setTimeout(() => {
      child.kill('SIGKILL');
      end(ENDLESS);
    }, longest);
    clock.unref();
  };
  const end = (words: string): void => {
    clearTimeout(clock);
    if (isRetired && given.length === 0) return;
    isRetired = true;
    // The first is the one at work: it would only end the next process as well.
    const [atWork, ...left] = given.splice(0);
    atWork?.reject(new TypesetError([words]));
    gone(left);
  };
  child.on('message', (message) => {
    const answer = message as Answer;
    const done = given.shift();
    watch();
    if (answer.memory > memoryLimit) isRetired = true;
    if (given.length === 0) keepOpen(child, false);
    if (isRetired && given.length === 0) retire();
    if (done !== undefined) settle(done, answer);
  });
  child.on('exit', () => end(STOPPED));
  child.on('error', (error) => end(`The typesetter could not be started: ${error.message}`));

  function retire(): void {
    isRetired = true;
    child.kill();
    gone([]);
  }
  return {
    give: (next) => {
      given.push(next);
      if (given.length === 1) watch();
      keepOpen(child, true);
      child.send(next.job);
    },
    waiting: () => given.length,
    isOpen: () => !isRetired && child.connected,
    close: () => {
      for (const { reject } of given.splice(0)) reject(new TypesetError([STOPPED]));
      retire();
    },
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

function settle({ resolve, reject }: Given, answer: Answer): void {
  const { missing, problems, pdf = new Uint8Array(), pages = 0, warnings = [] } = answer;
  if (missing !== undefined) reject(new TypesetterMissing(missing));
  else if (problems) reject(new TypesetError(problems));
  else resolve({ pdf, pages, warnings });
}
