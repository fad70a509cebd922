// What the command lends the language server: previews, prints, signatures and issues.
import { fileURLToPath, pathToFileURL } from 'node:url';
import { SETTINGS_FILE } from '@baywright/language';
import type { GuideSource, Renderers } from '@baywright/server';
import { changesSince } from '../desk/changes-since.js';
import type { FoundProcedure } from '../desk/find.js';
import { newestEdition } from '../desk/issue-store.js';
import { movedOnSince } from '../desk/moved-on.js';
import type { GuideDocument } from '../document/document.js';
import { forCursor, type Kind, type Options, sheetByClient, sheetName, sheetOf } from '../editor/sheet.js';
import { fileName, join } from './paths.js';
import { guideShelf } from './publish.js';
import { CannotRun, type Shell } from './shell.js';

type MadeFile = Extract<Awaited<ReturnType<NonNullable<Renderers['print']>>>, { made: true }>['file'];

export function guideRenderers(shell: Shell, canMakePdf: boolean): Renderers {
  const movedOn = movedOnSince(shell);
  return {
    canMakePdf,
    async preview(source, kind, options) {
      const { renderHtml } = await import('../output.js');
      const document = await sheet(shell, source, kind, options);
      return forCursor(renderHtml(document, source.settings.print).html, source);
    },
    async print(source, { kind, options, format }) {
      const { renderHtml, renderPdf } = await import('../output.js');
      const paper = (options.pageSize ?? source.settings.page) === 'Letter' ? 'letter' : 'a4';
      try {
        const document = await sheet(shell, source, kind, options);
        const pdf =
          format === 'pdf' ? await renderPdf(document, { paper, ...source.settings.print }) : undefined;
        const data = pdf?.pdf ?? renderHtml(document, source.settings.print).html;
        const file = await keep(shell, source, sheetName(source, kind, options, format), data);
        return { made: true, file, ...(pdf ? { pages: pdf.pages } : {}) };
      } catch (error) {
        return { made: false, reason: wordsOf(error) };
      }
    },
    async sign(source, { to, initials, note }) {
      const { signProcedure } = await import('../desk/sign.js');
      try {
        const procedure = { ...(await onDisk(shell, source)), analysis: source.analysis };
        const signed = signProcedure(shell, procedure, { to, by: initials, note: note ?? '' });
        return signed.state === 'signed'
          ? { signed: true, text: signed.text }
          : { signed: false, reasons: signed.reasons };
      } catch (error) {
        return { signed: false, reasons: [wordsOf(error)] };
      }
    },
    async issue(source, { copies }) {
      const { issueProcedure } = await import('../desk/issue.js');
      try {
        const result = await issueProcedure(shell, await onDisk(shell, source), { copies, trial: false });
        if (result.state !== 'issued') return result;
        const { revision, change } = result;
        return { state: 'issued', revision, change, files: guidesIn(shell, shell.resolve(result.folder)) };
      } catch (error) {
        return { state: 'refused', reasons: [wordsOf(error)] };
      }
    },
    issued({ number, settings, rootUri }) {
      const root = rootOf(shell, rootUri);
      return root === undefined ? undefined : newestEdition(shell, { root, settings }, number);
    },
    changedSince({ settings, rootUri, issued, job, isSameText }) {
      const root = rootOf(shell, rootUri);
      return root === undefined
        ? undefined
        : changesSince(shell, { root, settings }, issued, job, { isSameText });
    },
    outOfDate: ({ number, settings, rootUri, analysis }) => {
      const root = rootOf(shell, rootUri);
      return root === undefined ? undefined : movedOn({ root, settings }, number, analysis);
    },
  };
}

async function sheet(
  shell: Shell,
  source: GuideSource,
  kind: Kind,
  options: Options,
): Promise<GuideDocument> {
  const root = rootOf(shell, source.rootUri);
  if (root === undefined) return sheetByClient(source, kind, options);
  return sheetOf(source, kind, options, guideShelf(shell, { root, settings: source.settings }));
}

/** Writes a sheet into the output folder; one of a folder that is not on disk is handed over. */
async function keep(
  shell: Shell,
  { rootUri, settings, analysis }: GuideSource,
  plain: string,
  data: string | Uint8Array,
): Promise<MadeFile> {
  const root = rootOf(shell, rootUri);
  if (root === undefined) return { name: plain, base64: Buffer.from(data).toString('base64') };
  const { openLibrary } = await import('./libraries.js');
  const hasSettings = shell.kind(join(root, SETTINGS_FILE)) === 'file';
  const library = openLibrary(shell, root, hasSettings, [analysis.path]);
  // Another file of the library may have the same name, and its guide would be lost.
  const name = `${library.outputName(analysis.path)}${plain.slice(fileName(analysis.path).replace(/\.bay$/, '').length)}`;
  const path = join(join(root, settings.output), name);
  shell.write(path, data);
  return { name, uri: pathToFileURL(path).href };
}

/** The procedure as its file stands on disk, among the other files of its library. */
async function onDisk(shell: Shell, { rootUri, analysis }: GuideSource): Promise<FoundProcedure> {
  const root = rootOf(shell, rootUri);
  if (root === undefined)
    throw new CannotRun('this folder is not on a disk here; procedures are signed and issued where it is');
  const { findProcedures } = await import('../desk/find.js');
  const [procedure] = findProcedures(shell, [join(root, analysis.path)]);
  if (procedure === undefined) throw new CannotRun('it has no number yet; write one in its first line');
  return procedure;
}

/** The guides in the folder of an issue: what is printed first, then what is read on a tablet. */
function guidesIn(shell: Shell, folder: string): MadeFile[] {
  const entries = shell.list(folder);
  const names = 'problem' in entries ? [] : entries.map(({ name }) => name);
  const ending = (suffix: string): string[] => names.filter((name) => name.endsWith(suffix)).sort();
  return [...ending('.pdf'), ...ending('.html')].map((name) => ({
    name,
    uri: pathToFileURL(join(folder, name)).href,
  }));
}

/** The folder of the library as a path; undefined where it is not on a disk. */
function rootOf(shell: Shell, rootUri: string): string | undefined {
  return rootUri.startsWith('file:') ? shell.resolve(fileURLToPath(rootUri)) : undefined;
}

const wordsOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
