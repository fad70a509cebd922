// The requests that the Baywright client and server exchange beside the standard protocol: method names, what is
// asked, what is answered. It imports nothing, so that a client takes the types, and the few words there are, alone.
// Lines and characters are zero-based, characters are UTF-16 units, URIs are strings, as in the standard protocol.

export interface Position {
  readonly line: number;
  readonly character: number;
}

export interface Range {
  readonly start: Position;
  readonly end: Position;
}

export interface Location {
  readonly uri: string;
  readonly range: Range;
}

/** Method names. Requests go from client to server unless said otherwise. */
export const METHODS = {
  /** {@link ChoicesQuestion} → {@link Choices} */
  choices: 'baywright/choices',
  /** {@link StateQuestion} → {@link VehicleState} */
  state: 'baywright/state',
  /** {@link PreviewQuestion} → {@link PreviewAnswer} */
  preview: 'baywright/preview',
  /** {@link OrderQuestion} → {@link OrderAnswer} */
  order: 'baywright/order',
  /** no parameters → {@link Library} */
  library: 'baywright/library',
  /** {@link CheckQuestion} → {@link CheckAnswer} */
  check: 'baywright/check',
  /** {@link QuestionsQuestion} → {@link OpenQuestion}[]: what a draft leaves open, the most dangerous first. */
  questions: 'baywright/questions',
  /** {@link ExplainQuestion} → {@link ExplainAnswer}: the page of a kind of finding. */
  explain: 'baywright/explain',
  /** {@link PrintQuestion} → {@link PrintAnswer} */
  print: 'baywright/print',
  /** {@link SignQuestion} → {@link SignAnswer} */
  sign: 'baywright/sign',
  /** {@link IssueQuestion} → {@link IssueAnswer} */
  issue: 'baywright/issue',
  /** Notification from server to client, no parameters: procedures, findings or kept guides changed. */
  libraryChanged: 'baywright/libraryChanged',
  /** Notification from server to client, {@link PreviewStale}: ask for the preview and the state again. */
  previewStale: 'baywright/previewStale',
  /** Request from server to client, {@link ReadFileQuestion} → {@link ReadFileAnswer}. For folders that are not on disk, and for a server in a worker. */
  readFile: 'baywright/readFile',
  /** Request from server to client, {@link ListFilesQuestion} → string[] of URIs. */
  listFiles: 'baywright/listFiles',
} as const;

/** Scheme of the addresses that codes of findings lead to where the client shows their pages itself. */
export const PAGE_SCHEME = 'baywright-page';

/** Command of the client that shows places: URI and position of where it was asked, then the {@link Location}s. */
export const SHOW_USES = 'baywright.showUses';

/** What the client passes as `initializationOptions`. */
export interface StartOptions {
  /** True when the server must read files by `baywright/readFile` and `baywright/listFiles` instead of from disk. */
  readonly filesByClient: boolean;
  /** Display language of the editor, for messages, where `initialize` does not say it: `en`, `de`, … */
  readonly locale: string;
  /** True when the editor reads `baywright.json` by its schema: the server then says of an open one only what no schema can. */
  readonly settingsBySchema?: boolean;
  /** True when the editor opens addresses of {@link PAGE_SCHEME}, with the text that `baywright/explain` gives. */
  readonly showsPages?: boolean;
  /** True when the client has the command {@link SHOW_USES}: lenses that count uses then show them. */
  readonly showsUses?: boolean;
}

// ---- what a guide is made for

export type Status = 'draft' | 'proved' | 'released' | 'withdrawn';
export type UnitOrder = 'as written' | 'metric first' | 'US first';
export type PageSize = 'A4' | 'Letter';
export type Side = 'left' | 'right' | 'both';
export type GuideKind = 'guide' | 'torque-card' | 'pull-sheet' | 'record';

/** The choices a guide is made with. What is absent is not chosen: all options are shown, sides as the file says. */
export interface GuideOptions {
  readonly side?: Side;
  /** Chosen value by option name: `{ axle: 'heavy' }`; `year` may be among them. */
  readonly variant?: Readonly<Record<string, string>>;
  readonly unitOrder?: UnitOrder;
  readonly pageSize?: PageSize;
  readonly language?: 'en' | 'es' | 'fr' | 'de';
}

/** What there is to choose for the procedure of a document. */
export interface ChoicesQuestion {
  readonly uri: string;
}
export interface Choices {
  readonly number: string;
  readonly title: string;
  /** Empty when the procedure has no sides. */
  readonly sides: readonly Side[];
  /** Options of the vehicle that make a difference in this procedure. */
  readonly options: readonly { readonly name: string; readonly values: readonly string[] }[];
  /** What house settings say, used until the user chooses. */
  readonly unitOrder: UnitOrder;
  readonly pageSize: PageSize;
  readonly languages: readonly ('en' | 'es' | 'fr' | 'de')[];
  /** True when the PDF engine is here. */
  readonly canMakePdf: boolean;
  readonly status: Status;
  /** What it can be signed as next. */
  readonly nextStatuses: readonly Status[];
}

// ---- the vehicle at a line

/** The state of the vehicle just before the work of the line at `position`. */
export interface StateQuestion {
  readonly uri: string;
  readonly position: Position;
  readonly side?: Side;
  readonly variant?: Readonly<Record<string, string>>;
}

/** What an entry of the state is, for its icon. */
export type StateKind =
  | 'off'
  | 'hung'
  | 'loose'
  | 'untorqued'
  | 'disconnected'
  | 'capped'
  | 'drained'
  | 'unbled'
  | 'raised'
  | 'placed'
  | 'changed'
  | 'disturbed'
  | 'owed'
  | 'clock'
  | 'ban';

export interface StateEntry {
  /** The thing, by its title where it has one. */
  readonly label: string;
  /** How much, which side, since when: `4 of 5`, `left`, `step 3`. May be empty. */
  readonly detail: string;
  readonly kind: StateKind;
  /** The line that did it; absent when it was so from the start. */
  readonly location?: Location;
}

export interface StateSection {
  /** Plain words: `Off the vehicle`, `Loose`, `Owed before hand-back`. */
  readonly title: string;
  readonly entries: readonly StateEntry[];
}

export interface VehicleState {
  /** The variant and side shown, in words: `axle heavy, left`. Empty when there is only one. */
  readonly variant: string;
  /** Sections with entries, the gravest first. Empty when all is as it came in. */
  readonly sections: readonly StateSection[];
}

// ---- preview

export interface PreviewQuestion {
  readonly uri: string;
  readonly kind: GuideKind;
  readonly options: GuideOptions;
}

export interface PreviewAnswer {
  /**
   * A whole HTML document. Each element that comes from a source line carries `data-line`, zero-based, of its first
   * line in the document asked for (elements from other files carry none). No script is run from it. Pictures are data URIs.
   */
  readonly html: string;
  /** Number of findings that make the guide incomplete, for the heading of the panel. */
  readonly findings: FindingCounts;
}

export interface PreviewStale {
  /** Documents whose guide may look different now. */
  readonly uris: readonly string[];
}

/** The tightening order of a fastener as a picture. */
export interface OrderQuestion {
  readonly uri: string;
  readonly position: Position;
}
export interface OrderAnswer {
  /** Absent when there is no ordered fastener at that position. */
  readonly svg?: string;
}

// ---- findings and library

/** Findings by what they mean to the reader. Editor severities: error, warning, information, hint. */
export interface FindingCounts {
  readonly errors: number;
  readonly warnings: number;
  /** What is not known yet. */
  readonly questions: number;
}

export interface LibraryProcedure {
  readonly uri: string;
  readonly number: string;
  readonly title: string;
  readonly vehicles: readonly { readonly name: string; readonly title: string }[];
  readonly status: Status;
  readonly revision?: number;
  readonly findings: FindingCounts;
  /** Why its issued guide no longer says what the source says; absent when up to date or never issued. */
  readonly outOfDate?: string;
}

/** A figure with a source, and every place that prints or uses it. */
export interface LibrarySpec {
  /** `wheel-nut torque` */
  readonly name: string;
  readonly title: string;
  /** The figure as written: `160 N·m`. */
  readonly figure: string;
  readonly source?: string;
  readonly location: Location;
  readonly uses: readonly { readonly label: string; readonly location: Location }[];
}

export interface Library {
  readonly procedures: readonly LibraryProcedure[];
  readonly specs: readonly LibrarySpec[];
}

/** Checks one document, or the whole library when `uri` is absent, and publishes the findings. */
export interface CheckQuestion {
  readonly uri?: string;
}
export interface CheckAnswer {
  readonly files: number;
  readonly findings: FindingCounts;
}

export interface QuestionsQuestion {
  readonly uri: string;
}
export interface OpenQuestion {
  readonly code: string;
  readonly message: string;
  readonly location: Location;
}

/** `page` is a code, a name, or the file of its page: `S301`, `never-put-back`, `s301-never-put-back.md`. */
export interface ExplainQuestion {
  readonly page: string;
}
/** Why findings of the kind matter, a text that has one, and the same put right; absent when there is no such kind. */
export interface ExplainAnswer {
  readonly markdown?: string;
}

// ---- print and issue

export interface PrintQuestion {
  readonly uri: string;
  readonly kind: GuideKind;
  readonly options: GuideOptions;
  readonly format: 'pdf' | 'html';
}

/** A file that was made: written to disk (`uri`), or handed over for the client to save (`base64`). */
export interface MadeFile {
  readonly name: string;
  readonly uri?: string;
  readonly base64?: string;
}

export type PrintAnswer =
  | { readonly made: true; readonly file: MadeFile; readonly pages?: number }
  | { readonly made: false; readonly reason: string };

/** Takes a procedure to another status, by the rules of the house. The day is today. */
export interface SignQuestion {
  readonly uri: string;
  readonly to: Status;
  readonly initials: string;
  /** What is to be said of it; the rules may ask for it. */
  readonly note?: string;
}

/** The status line as an edit of the document, for the client to make; or why the rules refuse it, the gravest first. */
export type SignAnswer =
  | { readonly signed: true; readonly edit: { readonly range: Range; readonly newText: string } }
  | { readonly signed: false; readonly reasons: readonly string[] };

/** Issues a released procedure as its file stands on disk, in every side and language of the house. */
export interface IssueQuestion {
  readonly uri: string;
  /** Where printed copies will hang: `bay 2`. */
  readonly copies: readonly string[];
}

export type IssueAnswer =
  | {
      readonly state: 'issued';
      /** The guides, the PDF that is to be printed first. Empty for a withdrawal. */
      readonly files: readonly MadeFile[];
      readonly revision: number;
      /** What changed since the issue before. */
      readonly change: string;
    }
  /** Nothing changed since this revision was issued. */
  | { readonly state: 'current'; readonly revision: number }
  /** What stands in the way, the gravest first. */
  | { readonly state: 'refused'; readonly reasons: readonly string[] };

// ---- files by the client

export interface ReadFileQuestion {
  readonly uri: string;
  readonly encoding: 'utf-8' | 'base64';
}
/** `content` is absent when there is no such file. */
export interface ReadFileAnswer {
  readonly content?: string;
}

/** Files of the workspace folders whose names end in one of these: `.bay`, `baywright.json`, `.png`, … */
export interface ListFilesQuestion {
  readonly endings: readonly string[];
}

// ---- semantic tokens

/** Token types of the server's legend, in order. The first row are standard types, the rest are kinds of thing. */
export const TOKEN_TYPES = [
  'keyword',
  'function',
  'number',
  'string',
  'comment',
  'operator',
  'part',
  'fastener',
  'connection',
  'circuit',
  'fluid',
  'adjustment',
  'condition',
  'limit',
  'supply',
  'temporary',
  'place',
  'tool',
  'vehicle',
  'source',
  'message',
  'rule',
  'operation',
  'signal',
  'unit',
  'hole',
] as const;

export const TOKEN_MODIFIERS = ['declaration', 'critical', 'unknown'] as const;
