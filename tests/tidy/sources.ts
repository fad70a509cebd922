// The source files of the repository and what they import, read as text.
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const LEFT_OUT = new Set(['node_modules', 'dist', 'out', '.cache', '.git', 'coverage']);

export interface Source {
  /** Path from the root, with forward slashes. */
  readonly path: string;
  readonly text: string;
  /** The text without comments and without what strings hold. */
  readonly code: string;
}

/** Paths of all files of the repository that are written or generated, not built. */
export function allFiles(folder = ROOT): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (LEFT_OUT.has(entry.name)) return [];
    const path = join(folder, entry.name);
    return entry.isDirectory() ? allFiles(path) : [relative(ROOT, path).replaceAll('\\', '/')];
  });
}

export function sources(files: readonly string[] = allFiles()): Source[] {
  return files
    .filter((path) => /\.(?:ts|mts|mjs)$/.test(path) && !BUILT.has(path))
    .map((path) => {
      const text = readFileSync(join(ROOT, path), 'utf8');
      return { path, text, code: withoutText(text) };
    });
}

/** Scripts of guide pages that a script makes from `compiler/page`. */
const BUILT = new Set(['compiler/templates/html/page.js', 'compiler/templates/html/library.js']);

/** Comments go; strings and patterns are emptied, with what stands in braces of a template. */
function withoutText(text: string): string {
  return text.replace(PROSE, (found) => (/^\/[/*]/.test(found) ? '' : "''"));
}

const PROSE = new RegExp(
  [
    /\/\*[\s\S]*?\*\/|(?<![:\\])\/\/[^\n]*/,
    /'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\.|[^`\\])*`/,
    /(?<=[(,=:?&|[]\s*)\/(?![/*])(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n[])+\/[dgimsuvy]*/,
  ]
    .map((each) => each.source)
    .join('|'),
  'g',
);

export interface Import {
  readonly from: string;
  /** Path of a file of ours, or the name of a package. */
  readonly to: string;
  readonly isType: boolean;
}

const IMPORT =
  /^\s*(?:import|export)\s+(type\s)?(?:[^'"`;]*?\sfrom\s+)?'([^']+)'|\bimport\(\s*'([^']+)'\s*\)/gm;

export function importsOf({ path, text }: Source): Import[] {
  return [...text.matchAll(IMPORT)].map(([, type, direct, dynamic]) => ({
    from: path,
    to: resolved(path, direct ?? dynamic ?? ''),
    isType: type !== undefined,
  }));
}

function resolved(from: string, name: string): string {
  const [, ours, door = 'index'] = /^@baywright\/(\w+)(?:\/([\w-]+))?$/.exec(name) ?? [];
  if (ours !== undefined) return `${ours}/src/${door}.ts`;
  if (!name.startsWith('.')) return name;
  const path = join(dirname(from), name).replaceAll('\\', '/');
  const typed = path.replace(/\.js$/, '.ts').replace(/\.mjs$/, '.mts');
  return statSync(join(ROOT, typed), { throwIfNoEntry: false }) ? typed : path;
}

/** The package a path belongs to: `language`, `server`, …; undefined for a package from outside. */
export function packageOf(path: string): string | undefined {
  return /^(language|compiler|server|extension|tests)\//.exec(path)?.[1];
}

/** Circles of files, each once, from the file that comes first in it. */
export function circles(imports: readonly Import[]): string[] {
  const next = new Map<string, string[]>();
  for (const { from, to } of imports) next.set(from, [...(next.get(from) ?? []), to]);
  const found = new Set<string>();
  const done = new Set<string>();
  const walk = (path: string, trail: readonly string[]): void => {
    const at = trail.indexOf(path);
    if (at >= 0) {
      const circle = trail.slice(at);
      const first = circle.indexOf([...circle].sort()[0] ?? '');
      found.add(
        [...circle.slice(first), ...circle.slice(0, first)].map((each) => basename(each)).join(' → '),
      );
      return;
    }
    if (done.has(path)) return;
    for (const to of next.get(path) ?? []) walk(to, [...trail, path]);
    done.add(path);
  };
  for (const path of next.keys()) walk(path, []);
  return [...found].sort();
}
