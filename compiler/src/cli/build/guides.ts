// Checks some files of a library and makes their guides, file by file, in one thread.
import { type Finding, type LibraryPart, partOf, phrase } from '@baywright/language';
import type { Engine } from '../../pdf/engine.js';
import { keptFile } from '../check-file.js';
import type { KeptFile } from '../checked-file.js';
import type { Shelf } from '../libraries.js';
import { join, relativeTo } from '../paths.js';
import { type Format, type MadeGuide, makeGuide, type Wanted } from '../publish.js';
import { notingShell } from '../reads.js';
import { faultWords } from '../reasons.js';
import { CannotRun, type Shell } from '../shell.js';
import { type Options, unknownOptions, wantedOf } from './choices.js';
import { entryOf, type GuideEntry } from './entry.js';
import type { MadePrint } from './kept-guides.js';

/** What is made of the procedures of a library, and where it goes. */
export interface GuideOrder {
  readonly folder: string;
  readonly options: Options;
  readonly formats: readonly Format[];
}

/** What a thread says of one file: plain data. */
export interface FileResult {
  /** Library path. */
  readonly path: string;
  readonly errors: readonly Finding[];
  /** Missing for what is no procedure. */
  readonly guide?: GuideResult;
  /** What a later run needs to know that this holds; missing where something was refused or failed. */
  readonly kept?: { readonly file: KeptFile; readonly print?: MadePrint };
}

export interface GuideResult {
  /** Passed over: there is no such side, line or option of it. */
  readonly state: 'written' | 'passed over' | 'refused' | 'failed';
  readonly counts: Counts;
  readonly files: readonly BuiltFile[];
  /** What the list of guides says of the procedure. */
  readonly entry: GuideEntry;
  readonly notes: readonly string[];
  /** Options asked for that no vehicle of it has. */
  readonly unknownOptions: readonly string[];
}

type Counts = Readonly<Record<'error' | 'warning' | 'question', number>>;

interface BuiltFile {
  readonly path: string;
  readonly label: string;
  readonly pages?: number;
}

/** Procedures that stay in memory between the two times they are looked at, about half a megabyte each. */
const MOST_HELD = 50;

/**
 * What the others must know of these files. What was read is kept for their guides; of a large library only the first
 * files are, and the others are read again when their turn comes.
 */
export function partsOf({ library }: Shelf, files: readonly string[]): LibraryPart[] {
  return files.flatMap((path, at) => {
    const model = library.model(path);
    if (model === undefined) return [];
    const part = partOf(model);
    if (at >= MOST_HELD && part.kind === 'procedure') library.release(path);
    return part;
  });
}

/** `wide` holds what only the whole library can tell of the file. */
export async function guidesOf(
  shell: Shell,
  shelf: Shelf,
  order: GuideOrder,
  path: string,
  wide: readonly Finding[],
  engine: Engine | undefined,
): Promise<FileResult> {
  const analysis = shelf.library.analyse(path);
  if (!analysis) throw new CannotRun(`${path} cannot be read any more`);
  const found = [...analysis.findings, ...wide].sort((a, b) => a.span.start - b.span.start);
  const errors = found.filter(({ severity }) => severity === 'error');
  // What others take in stays in memory; of a procedure nothing does, so that a library of any size can be built.
  if (analysis.model.kind !== 'procedure')
    return {
      path,
      errors,
      ...(errors.length > 0 ? {} : { kept: { file: keptFile(shell, shelf, analysis) } }),
    };
  const counts = countsOf(found);
  const entry = entryOf(analysis);
  const files: BuiltFile[] = [];
  const notes = new Set<string>();
  const told = (state: GuideResult['state']): FileResult & { guide: GuideResult } => ({
    path,
    errors,
    guide: {
      state,
      counts,
      files,
      entry,
      notes: [...notes],
      unknownOptions: unknownOptions(analysis, order.options),
    },
  });
  if (errors.length > 0) {
    for (const name of earlierGuides(shell, order.folder, shelf.outputName(path)))
      notes.add(`${name} is of an earlier text: do not work by it`);
    return told('refused');
  }
  const noting = notingShell(shell);
  try {
    const { prints, problem } = wantedOf(shell.env.SOURCE_DATE_EPOCH, shelf, analysis, order.options);
    if (problem !== undefined) {
      notes.add(problem);
      return told('passed over');
    }
    for (const [wanted, label] of prints) {
      const made = await makeGuide(noting.shell, shelf, analysis, wanted, order.formats, engine);
      for (const said of made.notes) notes.add(said);
      files.push(...writeGuide(shell, shelf, order.folder, path, wanted, made, label));
    }
    const result = told('written');
    const written = Object.fromEntries(files.map((file) => [file.path, shell.seen?.(file.path)?.mark ?? '']));
    const print = { guide: result.guide, reads: noting.reads(), written };
    return { ...result, kept: { file: keptFile(shell, shelf, analysis), print } };
  } catch (error) {
    if (error instanceof CannotRun) throw error;
    notes.add(`could not be made: ${faultWords(error)}`);
    return told('failed');
  } finally {
    shelf.library.release(path);
  }
}

/** Guides of a procedure that lie in the output folder from before. */
function earlierGuides(shell: Shell, folder: string, base: string): string[] {
  const entries = shell.list(folder);
  if ('problem' in entries) return [];
  return entries
    .filter(
      ({ name, kind }) => kind === 'file' && name.startsWith(`${base}.`) && /\.(?:html|pdf)$/.test(name),
    )
    .map(({ name }) => relativeTo(shell.folder, join(folder, name)))
    .sort();
}

function countsOf(found: readonly Finding[]): Counts {
  const counts = { error: 0, warning: 0, question: 0, hint: 0 };
  for (const { severity } of found) counts[severity]++;
  const { error, warning, question } = counts;
  return { error, warning, question };
}

function writeGuide(
  shell: Shell,
  shelf: Shelf,
  folder: string,
  procedure: string,
  { choice: chosen, print }: Wanted,
  made: MadeGuide,
  label: string,
): BuiltFile[] {
  const base = [
    shelf.outputName(procedure),
    ...(chosen.sheet === 'guide' ? [] : [chosen.sheet]),
    ...(chosen.side === undefined ? [] : [chosen.side]),
    ...Object.entries(chosen.option).map(([name, value]) => `${name}-${value}`),
    ...(print.print === 'bay' ? [] : [print.print]),
    ...(chosen.language === shelf.settings.languages[0] ? [] : [chosen.language]),
  ].join('.');
  const files: BuiltFile[] = [];
  if (made.html !== undefined) {
    const path = join(folder, `${base}.html`);
    shell.write(path, made.html, true);
    files.push({
      path,
      label: label === '' ? phrase('guide-page', shelf.settings.languages[0] ?? 'en') : upper(label),
    });
  }
  if (made.pdf !== undefined) {
    const path = join(folder, `${base}${print.standard === 'a-2a' ? '.archive' : ''}.pdf`);
    shell.write(path, made.pdf.bytes, true);
    files.push({ path, label: label === '' ? 'PDF' : `${upper(label)}, PDF`, pages: made.pdf.pages });
  }
  return files;
}

const upper = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
