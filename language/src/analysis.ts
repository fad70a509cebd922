// The pipeline: text, tree, bound file, job, state, findings. One file, in the order it happens.
import { acceptFindings } from './checks/accept.js';
import { withoutEchoes } from './checks/echoes.js';
import { CHECKS } from './checks/index.js';
import { canRun } from './checks/nested.js';
import { releaseFindings } from './checks/release.js';
import type { Finding } from './diagnostics/define.js';
import type { Analysis, Library, LibraryHost } from './library.js';
import { bindFile } from './names/bind.js';
import { isDraft, isHalfWritten, isWithoutEnd } from './names/draft.js';
import { type Job, jobOf } from './names/job.js';
import type { FileModel, Thing } from './names/model.js';
import { forgetEarlierBound } from './names/statement.js';
import { numberIn } from './register/issue-folder.js';
import { runRules } from './rules/run-rules.js';
import { type Settings, severityOf } from './settings/index.js';
import { isPuttingBack } from './state/putting-back.js';
import { reportState, thingsTold } from './state/report.js';
import { runProcedure, type StateRun } from './state/run.js';
import { EarlierLines, parse } from './syntax/index.js';
import type { Tree } from './syntax/tree.js';

interface Read {
  readonly text: string;
  readonly tree: Tree;
  readonly findings: readonly Finding[];
  readonly model: FileModel;
}

export function createLibrary(host: LibraryHost, settings: Settings): Library {
  const reads = new Map<string, Read | undefined>();
  const begun = new Map<string, Begun>();
  /** Lines of files that are being written. */
  const earlier = new Map<string, EarlierLines>();
  /** Their jobs before the last edit. */
  const jobs = new Map<string, Job>();
  let numbers: Map<string, string> | undefined;

  const read = (path: string): Read | undefined => {
    if (reads.has(path)) return reads.get(path);
    const text = host.read(path);
    const parsed = text === undefined ? undefined : parse(text, path, earlier.get(path));
    const result =
      text === undefined || parsed === undefined
        ? undefined
        : { text, ...parsed, model: bindFile(path, parsed.tree) };
    reads.set(path, result);
    return result;
  };

  const begin = (path: string): Begun | undefined => {
    const known = begun.get(path);
    if (known) return known;
    const file = read(path);
    if (!file) return undefined;
    const job = jobOf(file.model, library, jobs.get(path));
    jobs.delete(path);
    const dependencies = dependenciesOf(job);
    const steps = analyse(file, library, job, dependencies);
    const own: Begun = { job, dependencies, steps, analysis: undefined };
    begun.set(path, own);
    return own;
  };

  const step = (path: string, own: Begun): void => {
    // Taken back for the time of the step: what fails is begun anew when it is asked for again.
    begun.delete(path);
    const { done, value } = own.steps.next();
    if (done) own.analysis = value;
    begun.set(path, own);
  };

  const library: Library = {
    host,
    settings,
    model: (path) => read(path)?.model,
    numbered(number) {
      if (!host.numbered) numbers ??= numbersOf(host);
      const path = host.numbered ? host.numbered(number) : numbers?.get(number);
      return path === undefined ? undefined : read(path)?.model;
    },
    tree: (path) => read(path)?.tree,
    syntaxFindings: (path) => read(path)?.findings ?? [],
    analyse(path) {
      const own = begin(path);
      while (own && !own.analysis) step(path, own);
      return own?.analysis;
    },
    advance(path) {
      const own = begin(path);
      if (own && !own.analysis) step(path, own);
      return !own || own.analysis !== undefined;
    },
    job: (path) => begin(path)?.job,
    release(path) {
      reads.delete(path);
      begun.delete(path);
      earlier.delete(path);
      jobs.delete(path);
    },
    changed(path) {
      numbers = undefined;
      if (path === undefined) {
        reads.clear();
        begun.clear();
        earlier.clear();
        jobs.clear();
        return;
      }
      if (reads.delete(path) && !earlier.has(path)) earlier.set(path, new EarlierLines());
      const own = begun.get(path);
      if (own) jobs.set(path, own.job);
      for (const [key, { dependencies }] of begun)
        if (key === path || dependencies.includes(path)) begun.delete(key);
    },
  };
  return library;
}

/** An analysis that was begun: what is known without running the work, and the steps that are left. */
interface Begun {
  readonly job: Job;
  readonly dependencies: readonly string[];
  readonly steps: Generator<undefined, Analysis>;
  analysis: Analysis | undefined;
}

/** What is left undone at the end of a job is a question while its second half is still to be written, or being written. */
function stillOpen(model: FileModel, run: StateRun, told: ReadonlySet<Thing>): readonly Finding[] {
  const found = reportState(run);
  if (!isHalfWritten(model) && !(isDraft(model) && isPuttingBack(run, told, isWithoutEnd(model))))
    return found;
  return found.map((f) => (f.code.startsWith('S3') ? { ...f, severity: 'question' } : f));
}

/** Whoever waits for an answer may ask in between: after each `yield` the rest can wait, or be left undone. */
function* analyse(
  file: Read,
  library: Library,
  job: Job,
  dependencies: readonly string[],
): Generator<undefined, Analysis> {
  const { model, tree, text } = file;
  const rules = runRules(job, new Set(library.settings.starterRulesOff.map((r) => r.rule)));
  const run =
    model.kind === 'procedure' && model.work.length > 0 && canRun(job)
      ? runProcedure(job, rules.listen)
      : undefined;
  yield;
  const told = run && thingsTold(run);
  const raw = [...file.findings, ...(run && told ? stillOpen(model, run, told) : [])];
  yield;
  if (told) raw.push(...rules.findings(told));
  const input = { job, run, library, syntax: file.findings };
  for (const check of CHECKS) {
    yield;
    raw.push(...check(input));
  }
  yield;
  forgetEarlierBound(job.scope);
  const findings = acceptFindings(
    model,
    withoutEchoes(raw)
      .map((f) => severityOf(f, library.settings))
      .filter((f) => f !== undefined),
  );
  return {
    path: model.path,
    text,
    tree,
    model,
    job,
    run,
    findings: sorted([...findings, ...releaseFindings(model, findings)]),
    dependencies,
  };
}

function dependenciesOf(job: Job): string[] {
  const paths = job.scopes
    .flatMap((s) => s.files.map((f) => f.path))
    .concat(job.scope.missing.map((m) => m.path?.text ?? ''));
  return [...new Set(paths)].filter((p) => p !== job.file.path);
}

/** Findings in the order of the text, graver first at one place. */
function sorted(findings: readonly Finding[]): Finding[] {
  return [...findings].sort(
    (a, b) =>
      a.file.localeCompare(b.file, 'en') || a.span.start - b.span.start || a.code.localeCompare(b.code, 'en'),
  );
}

/** Procedure numbers of the library, read from first lines alone. */
function numbersOf(host: LibraryHost): Map<string, string> {
  const numbers = new Map<string, string>();
  for (const path of host.list()) {
    const number = numberIn(host.read(path) ?? '');
    if (number !== undefined && !numbers.has(number)) numbers.set(number, path);
  }
  return numbers;
}
