// Opens one side of a comparison: files or a folder as they are now, a guide as issued, or either as git has them.
import {
  type Change,
  changesBetween,
  createLibrary,
  DEFAULT_SETTINGS,
  globMatcher,
  type Job,
  jobOf,
  LANGUAGES,
  type Library,
  type ShopFacts,
  type ShownFiles,
  shopFacts,
} from '@baywright/language';
import { collect, SUFFIX } from '../cli/libraries.js';
import { below, join, parent, relativeTo } from '../cli/paths.js';
import { CannotRun, decodeText, type Shell } from '../cli/shell.js';
import { factsNow, shownIn } from './changes-since.js';
import { findProcedures, isPath } from './find.js';
import { edition, issuedRevisions, type StoreLibrary } from './issue-store.js';
import { translationPaths, wordsChanged } from './issued-translations.js';

/** What is compared: one or more files, and what to call them. */
export interface Side {
  readonly label: string;
  readonly files: readonly SideFile[];
}

/** What a file says, and the translations that it is printed from, as texts by library path. */
export interface SideFile extends ShopFacts {
  readonly translations: ReadonlyMap<string, string>;
}

/**
 * `procedures`, `FH-12` and `FH-12.bay` are what stands now; `FH-12@4` is revision 4 as issued, `FH-12@issued` the last
 * issue; `v1.2:procedures` is what git has under that name.
 */
export function openSide(shell: Shell, written: string): Side {
  if (isPath(shell, written)) return currentSide(shell, written);
  const issue = /^(.+)@(issued|\d+)$/.exec(written);
  if (issue?.[1] && issue[2]) return issuedSide(shell, issue[1], issue[2]);
  const git = /^([^:]+):(.*)$/.exec(written);
  if (git?.[1] !== undefined && git[2] !== undefined) return gitSide(shell, git[1], git[2]);
  const found = findProcedures(shell, [written]);
  return {
    label: written,
    files: found.map(({ shelf: { root }, analysis: { job } }) => ({
      ...factsNow(shell, root, job),
      translations: translationsIn(textIn(shell, root), job),
    })),
  };
}

function currentSide(shell: Shell, path: string): Side {
  const { shelves, troubles } = collect(shell, [path]);
  const [trouble] = troubles;
  if (trouble !== undefined) throw new CannotRun(`${trouble.path} ${trouble.problem}`);
  // Of a library inside another one each path begins at the folder compared, as git tells it too.
  const outer = shelves.map(({ root }) => root).sort((a, b) => a.length - b.length)[0] ?? shell.folder;
  const files = shelves.flatMap(({ root, library, files: own }) => {
    const inside = below(outer, root) ?? '';
    return factsOf(library, own, textIn(shell, root), shownIn(shell, root)).map((facts) => ({
      ...facts,
      path: join(inside, facts.path),
    }));
  });
  if (files.length === 0) throw new CannotRun(`${path} holds no procedure or catalogue`);
  return { label: path, files };
}

function issuedSide(shell: Shell, number: string, which: string): Side {
  const known = findProcedures(shell, [])[0]?.shelf;
  const store: StoreLibrary = known ?? { root: shell.folder, settings: DEFAULT_SETTINGS };
  const revisions = issuedRevisions(shell, store, number);
  const revision = which === 'issued' ? revisions.at(-1) : Number(which);
  if (revision === undefined || !revisions.includes(revision)) {
    const there = revisions.length === 0 ? 'nothing of it was issued' : `issued are ${revisions.join(', ')}`;
    throw new CannotRun(
      `there is no ${which === 'issued' ? 'issue' : `revision ${which}`} of ${number}; ${there}`,
    );
  }
  const issued = edition(shell, store, number, revision);
  if (issued === undefined) throw new CannotRun(`the source of ${number} revision ${revision} is gone`);
  const { files, path, shown = {} } = issued;
  const library = createLibrary(
    {
      read: (name) => files.get(name),
      list: () => [...files.keys()].filter((name) => name.endsWith(SUFFIX)),
    },
    DEFAULT_SETTINGS,
  );
  const label = `${number} revision ${revision}`;
  return {
    label,
    files: factsOf(
      library,
      [path],
      (name) => files.get(name),
      (name) => shown[name],
    ),
  };
}

function gitSide(shell: Shell, revision: string, path: string): Side {
  const label = `${revision}:${path}`;
  if (revision.startsWith('-')) throw new CannotRun(`${label} is no revision of git`);
  const ask = (args: readonly string[]): string => {
    const answer = shell.git(shell.folder, args);
    if ('problem' in answer) throw new CannotRun(`${label} ${answer.problem}`);
    return answer.text;
  };
  // Imports are read from the whole tree of that revision, by paths from the root of the repository.
  const root = ask(['rev-parse', '--show-toplevel']).trim();
  const within = relativeTo(root, shell.resolve(path === '' ? '.' : path));
  const all = ask([
    '-c',
    'core.quotePath=off',
    'ls-tree',
    '-r',
    '--name-only',
    '--full-tree',
    revision,
  ]).split('\n');
  const listed = all.filter((name) => name.endsWith(SUFFIX));
  const isWanted = within === '' ? () => true : globMatcher([within.replace(/[*?[\]{}()!]/g, '\\$&')]);
  const wanted = listed.filter(
    (name) => isWanted(name) && !name.split('/').includes(DEFAULT_SETTINGS.issues),
  );
  if (wanted.length === 0) throw new CannotRun(`${label} holds no procedure or catalogue`);
  const there = new Set(all);
  const kept = new Map<string, Uint8Array | undefined>();
  const bytes = (name: string): Uint8Array | undefined => {
    if (!kept.has(name))
      kept.set(name, there.has(name) ? shell.gitFile(root, `${revision}:${name}`) : undefined);
    return kept.get(name);
  };
  const read = (name: string): string | undefined => {
    const own = bytes(name);
    const reading = own && decodeText(own);
    return reading && 'text' in reading ? reading.text : undefined;
  };
  const shown: ShownFiles = (name) => {
    const own = bytes(name);
    return own && shell.hash(own);
  };
  // Only the folder asked for is listed, so that a number is looked for among the same procedures as now.
  const library = createLibrary({ read, list: () => wanted }, DEFAULT_SETTINGS);
  return { label, files: factsOf(library, wanted, read, shown) };
}

type ReadText = (path: string) => string | undefined;

const textIn =
  (shell: Shell, root: string): ReadText =>
  (path) => {
    const reading = shell.read(join(root, path));
    return 'text' in reading ? reading.text : undefined;
  };

function factsOf(library: Library, paths: readonly string[], read: ReadText, shown: ShownFiles): SideFile[] {
  return paths.flatMap((path) => {
    const model = library.model(path);
    if (model === undefined || model.kind === 'other') return [];
    const job = jobOf(model, library);
    return [{ ...shopFacts(job, shown), translations: translationsIn(read, job) }];
  });
}

/** The files of translations beside a file and all it uses, into any language. */
const translationsIn = (read: ReadText, job: Job): ReadonlyMap<string, string> =>
  new Map(
    translationPaths(LANGUAGES, job).flatMap((path) => {
      const text = read(path);
      return text === undefined ? [] : [[path, text] as const];
    }),
  );

/** What changed between two files, in their own language and in those that a side has translations into. */
export function changesOf(old: SideFile, now: SideFile): Change[] {
  const languages = LANGUAGES.filter((language) =>
    [...old.translations.keys(), ...now.translations.keys()].some((path) => path.endsWith(`.${language}.po`)),
  );
  return [
    ...changesBetween(old, now),
    ...languages.flatMap((language) => wordsChanged(language, old.translations, now.translations, now)),
  ];
}

/** Files of two sides that are the same guide: by number, else by the end of their path. */
export function pairs(old: Side, now: Side): Pair[] {
  const [first, second] = [old.files[0], now.files[0]];
  // Two single files are compared whatever they are called.
  if (old.files.length === 1 && now.files.length === 1) return [{ old: first, new: second }];
  const key = ({ kind, number, path }: SideFile, all: readonly SideFile[]): string =>
    kind === 'procedure' && number !== ''
      ? `number ${number}`
      : `path ${relativeTo(commonFolder(all), path)}`;
  const before = new Map(old.files.map((file) => [key(file, old.files), file]));
  const after = new Map(now.files.map((file) => [key(file, now.files), file]));
  const keys = [...new Set([...after.keys(), ...before.keys()])];
  const all = keys.map((one) => ({ old: before.get(one), new: after.get(one) }));
  return withRenamed(all);
}

interface Pair {
  readonly old: SideFile | undefined;
  readonly new: SideFile | undefined;
}

/** A catalogue that went and one that came under another name are one, where no other has that title. */
function withRenamed(all: readonly Pair[]): Pair[] {
  const isNew = (pair: Pair): boolean => pair.old === undefined && pair.new?.kind !== 'procedure';
  const isGone = (pair: Pair): boolean => pair.new === undefined && pair.old?.kind !== 'procedure';
  const titled = (wanted: string, side: (pair: Pair) => boolean): Pair | undefined => {
    const found = all.filter((pair) => side(pair) && (pair.new ?? pair.old)?.title === wanted);
    return found.length === 1 ? found[0] : undefined;
  };
  const renamed = new Map(
    all.flatMap((pair) => {
      const title = isNew(pair) ? pair.new?.title : undefined;
      const gone = title === undefined ? undefined : titled(title, isGone);
      return gone && title !== undefined && titled(title, isNew) ? [[pair, gone] as const] : [];
    }),
  );
  const told = new Set(renamed.values());
  return all.flatMap((pair) =>
    told.has(pair) ? [] : [{ old: renamed.get(pair)?.old ?? pair.old, new: pair.new }],
  );
}

/** The folder that all files lie in, so that two folders with other names can be compared. */
function commonFolder(files: readonly SideFile[]): string {
  const folders = files.map(({ path }) => parent(`/${path}`).split('/'));
  const [first = []] = folders;
  let depth = 0;
  while (depth < first.length && folders.every((parts) => parts[depth] === first[depth])) depth++;
  return first.slice(0, depth).join('/').replace(/^\//, '');
}
