// The one space of names of a procedure: its own things and those of every file it uses, directly or through others.

import type { UseLine } from '../syntax/tree.js';
import { BUILT_IN_NAMES } from '../vocabulary/kinds.js';
import type { FileModel, Thing } from './model.js';

/** Finds other files of the library. */
export interface Imports {
  /** The model of a file by library path, or undefined when there is none. */
  model(path: string): FileModel | undefined;
  /** The procedure with this number. */
  numbered(number: string): FileModel | undefined;
}

export interface Clash {
  readonly name: string;
  readonly first: Thing;
  readonly again: Thing;
}

export interface Scope {
  readonly file: FileModel;
  /** The files in it, the file itself first. */
  readonly files: readonly FileModel[];
  resolve(name: string): Thing | undefined;
  readonly names: ReadonlyMap<string, Thing>;
  /** Names declared twice, in this file or in two files. */
  readonly clashes: readonly Clash[];
  /** Imports that name no file of the library. */
  readonly missing: readonly UseLine[];
  /** Imports that lead back to this file, with the way round. */
  readonly cycles: readonly { readonly line: UseLine; readonly way: readonly string[] }[];
}

const BUILT_INS: readonly Thing[] = BUILT_IN_NAMES.map((name) => ({
  id: `#${name}`,
  kind: 'machine',
  name,
  title: name,
  file: '',
  line: undefined,
  clauses: new Map(),
  values: [],
  marks: [],
  exists: [],
}));

/** What is there in every job under this name: the vehicle, its engine, its suspension. */
export function builtIn(name: string): Thing | undefined {
  return BUILT_INS.find((thing) => thing.name === name);
}

/** `before`: the names of the same file before an edit. Where they still mean the same, they are the same object. */
export function scopeOf(file: FileModel, imports: Imports, before?: Scope['names']): Scope {
  const files: FileModel[] = [file];
  const missing: UseLine[] = [];
  const cycles: { line: UseLine; way: readonly string[] }[] = [];
  const seen = new Set([file.path]);
  const visit = (from: FileModel, top: UseLine | undefined, way: readonly string[]): void => {
    for (const use of from.uses) {
      const own = top ?? use;
      const path = use.path && !use.path.hole ? resolvePath(from.path, use.path.text) : undefined;
      if (path === undefined) {
        if (from === file && use.path && !use.path.hole) missing.push(use);
        continue;
      }
      if (path === file.path) {
        cycles.push({ line: own, way: [...way, path] });
        continue;
      }
      if (seen.has(path)) continue;
      const model = imports.model(path);
      if (!model) {
        if (from === file) missing.push(use);
        continue;
      }
      seen.add(path);
      files.push(model);
      visit(model, own, [...way, path]);
    }
  };
  visit(file, undefined, [file.path]);

  const found = new Map<string, Thing>();
  const clashes: Clash[] = [];
  for (const thing of BUILT_INS) found.set(thing.name, thing);
  for (const model of files) {
    // Imported procedures lend their declarations too: a house may keep a family's parts in its main procedure.
    for (const thing of model === file ? [...model.things, ...model.operations] : model.things) {
      const first = found.get(thing.name);
      if (!first || first.kind === 'machine') found.set(thing.name, thing);
      else if (first.kind !== 'rule' || thing.kind === 'rule')
        clashes.push({ name: thing.name, first, again: thing });
    }
  }
  const names = before && isSame(before, found) ? before : found;
  return { file, files, names, resolve: (name) => names.get(name), clashes, missing, cycles };
}

function isSame(before: Scope['names'], found: Scope['names']): boolean {
  if (before.size !== found.size) return false;
  const order = before.entries();
  for (const [name, thing] of found) {
    const { value } = order.next();
    if (value?.[0] !== name || value[1] !== thing) return false;
  }
  return true;
}

/**
 * A path written in `use` or `picture`, seen from the file that names it. Undefined when it leads outside the library
 * or is absolute: nothing outside the library's root is ever read.
 */
export function resolvePath(from: string, written: string): string | undefined {
  if (
    written === '' ||
    written.startsWith('/') ||
    /^[A-Za-z][A-Za-z0-9+.-]*:/.test(written) ||
    written.includes('\\') ||
    written.includes('\0')
  ) {
    return undefined;
  }
  const parts = from.split('/').slice(0, -1);
  for (const part of written.split('/')) {
    if (part === '' || part === '.') continue;
    if (part !== '..') parts.push(part);
    else if (parts.pop() === undefined) return undefined;
  }
  return parts.join('/');
}
