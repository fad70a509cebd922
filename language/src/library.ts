// A library of Baywright files as the core sees it: where texts come from, and what is known of each file.
import type { Finding } from './diagnostics/define.js';
import type { Job } from './names/job.js';
import type { FileModel } from './names/model.js';
import type { Imports } from './names/scope.js';
import type { Change } from './register/changes.js';
import type { IssuedEdition } from './register/edition.js';
import type { Settings } from './settings/index.js';
import type { StateRun } from './state/run.js';
import type { Tree } from './syntax/tree.js';

/** What the core needs from outside: the files of one library, by path from its root with forward slashes. */
export interface LibraryHost {
  /** Text of a file, undefined when there is none. */
  read(path: string): string | undefined;
  /** Paths of all `.bay` files, for procedures named by number. */
  list(): readonly string[];
  /** Path of the procedure with a number, for a host that knows it; without it the first lines of all files are read. */
  numbered?(number: string): string | undefined;
  /** Whether there is a file of any kind, for pictures; without it pictures are not looked for. */
  exists?(path: string): boolean;
  /** The day it is, `2026-10-05`, for review dates; without it none has passed. */
  today?(): string;
  /** What the workshop has in hand of the procedure with this number; without it none counts as issued. */
  issued?(number: string): IssuedEdition | undefined;
  /**
   * What a procedure prints otherwise than an issue of it did, pictures and translations included; undefined, or without
   * it, texts alone are compared. `isSameText`: every file is letter for letter the one that was issued.
   */
  changedSince?(issued: IssuedEdition, job: Job, isSameText: boolean): readonly Change[] | undefined;
}

/** Everything known of one file and what it uses. */
export interface Analysis {
  readonly path: string;
  readonly text: string;
  readonly tree: Tree;
  readonly model: FileModel;
  readonly job: Job;
  /** The run of the work; undefined for files without work. */
  readonly run: StateRun | undefined;
  readonly findings: readonly Finding[];
  /** Paths of the files this analysis depends on, itself not among them. */
  readonly dependencies: readonly string[];
}

export interface Library extends Imports {
  readonly host: LibraryHost;
  readonly settings: Settings;
  analyse(path: string): Analysis | undefined;
  /** Goes one step on with an analysis, a small part of the whole; true when it is ready, or there is no such file. */
  advance(path: string): boolean;
  /** What the names of a file mean, without running its work: a small part of an analysis. */
  job(path: string): Job | undefined;
  tree(path: string): Tree | undefined;
  /** Syntax findings alone, for the quick half of checking while typing. */
  syntaxFindings(path: string): readonly Finding[];
  /** Drops what is kept of a file that is not looked at, to save memory; nothing else is forgotten. */
  release(path: string): void;
  /** Forgets a file and every analysis that depends on it. Without a path: forgets all. */
  changed(path?: string): void;
}
