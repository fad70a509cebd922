// The shape of a check that reads a bound procedure or catalogue, and its state run when there is one.
import type { Finding } from '../diagnostics/define.js';
import type { Library } from '../library.js';
import type { Job } from '../names/job.js';
import type { StateRun } from '../state/run.js';

interface CheckInput {
  readonly job: Job;
  /** Undefined for catalogues and for files without work. */
  readonly run: StateRun | undefined;
  readonly library: Library;
  /** The file's syntax findings: a check keeps quiet on lines that have one. */
  readonly syntax: readonly Finding[];
}

/** Gives the findings of one subject in the job's own file; what an import declares is reported when that file is checked. */
export type Check = (input: CheckInput) => readonly Finding[];
