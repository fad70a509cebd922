// The pipeline: text, tree, bound file, job, state, findings. One file, in the order it happens.
import { acceptFindings } from './checks/accept.js';
import { withoutEchoes } from './checks/echoes.js';
import { CHECKS } from './checks/index.js';
import { canRun } from './checks/nested.js';
import { releaseFindings } from './checks/release.js';
import type { Finding } from './diagnostics/define.js';
import type { Analysis, Library, LibraryHost } from './library.js';
import { bindFile } from './names/bind.js';
import { jobOf } from './names/job.js';
import type { FileModel } from './names/model.js';
import { numberIn } from './register/issue-folder.js';
import { runRules } from './rules/run-rules.js';
import { type Settings, severityOf } from './settings/index.js';
import { reportState, thingsTold } from './state/report.js';
import { runProcedure } from './state/run.js';
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
  const analyses = new Map<string, Analysis>();
  /** Lines of files that are being written. */
  const earlier = new Map<string, EarlierLines>();
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

  const library: Library = {
    host,
    settings,
    model: (path) => read(path)?.model,
    numbered(number) {
      numbers ??= numbersOf(host);
      const path = numbers.get(number);
      return path === undefined ? undefined : read(path)?.model;
    },
    tree: (path) => read(path)?.tree,
    syntaxFindings: (path) => read(path)?.findings ?? [],
    analyse(path) {
      const known = analyses.get(path);
      if (known) return known;
      const file = read(path);
      if (!file) return undefined;
      const analysis = analyse(file, library);
      analyses.set(path, analysis);
      return analysis;
    },
    release(path) {
      reads.delete(path);
      analyses.delete(path);
      earlier.delete(path);
    },
    changed(path) {
      numbers = undefined;
      if (path === undefined) {
        reads.clear();
        analyses.clear();
        earlier.clear();
        return;
      }
      if (reads.delete(path) && !earlier.has(path)) earlier.set(path, new EarlierLines());
      for (const [key, analysis] of analyses)
        if (key === path || analysis.dependencies.includes(path)) analyses.delete(key);
    },
  };
  return library;
}

function analyse(file: Read, library: Library): Analysis {
  const { model, tree, text } = file;
  const job = jobOf(model, library);
  const rules = runRules(job, new Set(library.settings.starterRulesOff.map((r) => r.rule)));
  const run =
    model.kind === 'procedure' && model.work.length > 0 && canRun(job)
      ? runProcedure(job, rules.listen)
      : undefined;
  const input = { job, run, library, syntax: file.findings };
  const raw = [
    ...file.findings,
    ...(run ? [...reportState(run), ...rules.findings(thingsTold(run))] : []),
    ...CHECKS.flatMap((check) => check(input)),
  ];
  const findings = acceptFindings(
    model,
    withoutEchoes(raw)
      .map((f) => severityOf(f, library.settings))
      .filter((f) => f !== undefined),
  );
  const dependencies = job.scopes
    .flatMap((s) => s.files.map((f) => f.path))
    .concat(job.scope.missing.map((m) => m.path?.text ?? ''));
  return {
    path: model.path,
    text,
    tree,
    model,
    job,
    run,
    findings: sorted([...findings, ...releaseFindings(model, findings)]),
    dependencies: [...new Set(dependencies)].filter((p) => p !== model.path),
  };
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
