// Checks one file and says what its findings rest on, so that they can be kept as long as that stands.
import { type Analysis, everyLine, partOf, resolvePath } from '@baywright/language';
import { dayOf } from '@baywright/server/day';
import { shownIn, shownNow } from '../desk/changes-since.js';
import { issuedRevisions } from '../desk/issue-store.js';
import { translationPaths } from '../desk/issued-translations.js';
import type { CheckedFile, KeptFile, Rests } from './checked-file.js';
import type { OpenLibrary } from './libraries.js';
import type { Shell } from './shell.js';

/** Undefined when there is no such file. Nothing is kept of a procedure: memory stays with what others take in. */
export function checkFile(shell: Shell, opened: OpenLibrary, path: string): CheckedFile | undefined {
  const analysis = opened.library.analyse(path);
  if (analysis === undefined) return undefined;
  const checked = { ...keptFile(shell, opened, analysis), findings: analysis.findings };
  if (analysis.model.kind === 'procedure') opened.library.release(path);
  return checked;
}

/** What is kept of an analysed file, whatever came of it. */
export function keptFile(shell: Shell, opened: OpenLibrary, analysis: Analysis): KeptFile {
  const { path, model } = analysis;
  const mark = opened.mark(path);
  const number = opened.numberOf(path);
  return {
    path,
    ...(mark === undefined ? {} : { mark }),
    ...(number === undefined ? {} : { number }),
    part: partOf(model),
    rests: restsOf(shell, opened, analysis),
  };
}

function restsOf(shell: Shell, opened: OpenLibrary, { model, job, path }: Analysis): Rests {
  const files = new Map<string, string>([[path, fileHash(shell, opened, path)]]);
  const numbers = new Map<string, string>();
  const ask = (number: string | undefined): void => {
    if (number !== undefined) numbers.set(number, opened.pathOf(number) ?? '');
  };
  ask(model.number);
  for (const file of job.scopes.flatMap((scope) => scope.files)) {
    files.set(file.path, fileHash(shell, opened, file.path));
    for (const use of file.uses) {
      const used = use.path && !use.path.hole ? resolvePath(file.path, use.path.text) : undefined;
      if (used !== undefined) files.set(used, fileHash(shell, opened, used));
    }
    for (const line of everyLine(file.work)) if (line.kind === 'perform' && line.from) ask(line.from.text);
  }
  const pictures = new Map<string, boolean>();
  for (const line of everyLine(model.lines)) {
    if ((line.kind !== 'picture' && line.kind !== 'clip') || !line.path) continue;
    const picture = resolvePath(path, line.path.text);
    if (picture !== undefined) pictures.set(picture, opened.exists(picture));
  }
  const isReleased = model.status?.status?.text === 'released';
  const issue =
    isReleased && model.number !== undefined ? newestIssue(shell, opened, model.number) : undefined;
  // What the workshop has in hand is compared with translations and with what is in the pictures.
  const isHeld = issue !== undefined && issue >= 0;
  for (const name of isHeld ? translationPaths(opened.settings.languages, job) : [])
    files.set(name, fileHash(shell, opened, name));
  return {
    files: Object.fromEntries(files),
    numbers: Object.fromEntries(numbers),
    pictures: Object.fromEntries(pictures),
    ...(issue === undefined ? {} : { issue }),
    ...(isHeld ? { shown: shownNow(shell, opened.root, job) } : {}),
    ...(isReleased ? { day: dayOf(shell.now()) } : {}),
  };
}

/** Whether everything that findings rest on is as it was. */
export function stillHolds(
  shell: Shell,
  opened: OpenLibrary,
  number: string | undefined,
  rests: Rests,
): boolean {
  const all = <T>(record: Readonly<Record<string, T>>, now: (key: string) => T | undefined): boolean =>
    Object.entries(record).every(([key, value]) => now(key) === value);
  return (
    (rests.day === undefined || rests.day === dayOf(shell.now())) &&
    all(rests.files, (path) => fileHash(shell, opened, path)) &&
    all(rests.numbers, (one) => opened.pathOf(one) ?? '') &&
    all(rests.pictures, (path) => opened.exists(path)) &&
    all(rests.shown ?? {}, shownIn(shell, opened.root)) &&
    (rests.issue === undefined ||
      (number !== undefined && rests.issue === newestIssue(shell, opened, number)))
  );
}

/** A hash is asked for once for each text: many files rest on one catalogue. */
const hashes = new WeakMap<OpenLibrary['library'], Map<string, { text: string; hash: string }>>();

function fileHash(shell: Shell, opened: OpenLibrary, path: string): string {
  const fact = opened.fact(path);
  if (fact !== undefined) return fact.hash;
  const text = opened.text(path);
  if (text === undefined) return '';
  const known = hashes.get(opened.library) ?? new Map<string, { text: string; hash: string }>();
  hashes.set(opened.library, known);
  const made = known.get(path);
  if (made?.text === text) return made.hash;
  const hash = shell.hash(text);
  known.set(path, { text, hash });
  return hash;
}

const newestIssue = (shell: Shell, opened: OpenLibrary, number: string): number =>
  issuedRevisions(shell, opened, number).at(-1) ?? -1;
