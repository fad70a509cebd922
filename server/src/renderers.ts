// The seam to guides: the server makes none, since the compiler stands beside it, not below it. Whoever starts the
// server lends what it can: the command line all of it, a worker nothing; questions then get a plain answer.
import type { Analysis, Change, IssuedEdition, Job, Settings } from '@baywright/language';
import type {
  GuideKind,
  GuideOptions,
  IssueAnswer,
  IssueQuestion,
  PrintAnswer,
  PrintQuestion,
  SignQuestion,
} from './protocol.js';

/** What a guide is made from. */
export interface GuideSource {
  readonly analysis: Analysis;
  readonly settings: Settings;
  readonly uri: string;
  readonly rootUri: string;
  /** A file beside the source as base64, undefined when there is none; `path` is a library path. */
  readBase64(path: string): Promise<string | undefined>;
}

/** A signed procedure is its whole new text. */
type Signing =
  | { readonly signed: true; readonly text: string }
  | { readonly signed: false; readonly reasons: readonly string[] };

/** A procedure that may have been issued. It is analysed only where there is an issue to compare it with. */
interface IssuedProcedure extends Pick<GuideSource, 'settings' | 'rootUri'> {
  readonly number: string;
  analysis(): Analysis;
}

/** A procedure beside an issue of it. */
interface IssuedBeside extends Pick<GuideSource, 'settings' | 'rootUri'> {
  readonly issued: IssuedEdition;
  readonly job: Job;
  /** Every file is letter for letter the one that was issued. */
  readonly isSameText: boolean;
}

export interface Renderers {
  /**
   * The whole HTML document of a guide. Elements made from a source line of `uri` carry `data-line`, zero-based; no
   * script runs from it and pictures are data URIs.
   */
  readonly preview?: (
    source: GuideSource,
    kind: GuideKind,
    options: GuideOptions,
  ) => string | Promise<string>;
  readonly print?: (source: GuideSource, question: PrintQuestion) => Promise<PrintAnswer>;
  readonly sign?: (source: GuideSource, question: SignQuestion) => Signing | Promise<Signing>;
  readonly issue?: (source: GuideSource, question: IssueQuestion) => Promise<IssueAnswer>;
  /** What the workshop has in hand of a procedure; undefined where nothing was issued. Asked once until files come or go. */
  readonly issued?: (procedure: Omit<IssuedProcedure, 'analysis'>) => IssuedEdition | undefined;
  /** What a procedure prints otherwise than an issue of it, pictures and translations included. */
  readonly changedSince?: (procedure: IssuedBeside) => readonly Change[] | undefined;
  /** Why the issued guide of a procedure no longer says what the source says; undefined when it does or there is none. */
  readonly outOfDate?: (procedure: IssuedProcedure) => string | undefined;
  /** True when the PDF engine is here. */
  readonly canMakePdf: boolean;
}

let lent: Renderers = { canMakePdf: false };

/** Lends the server what makes guides. Call it before the server starts. */
export function registerRenderers(renderers: Renderers): void {
  lent = renderers;
}

export function renderers(): Renderers {
  return lent;
}
