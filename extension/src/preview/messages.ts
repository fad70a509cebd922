// What the editor and the preview page say to each other.
import type { FindingCounts, GuideKind, UnitOrder } from '@baywright/server/protocol';

export type ToPage =
  | {
      readonly type: 'show';
      readonly html: string;
      readonly kind: GuideKind;
      readonly unitOrder: UnitOrder;
      readonly findings: FindingCounts;
      /** `1 error, 2 questions`, in the display language. */
      readonly findingWords: string;
      readonly paper: 'as printed' | 'as the editor';
      /** True when the PDF engine is carried; else the page does not offer it. */
      readonly canMakePdf: boolean;
    }
  /** The guide cannot be made; why, in a sentence. */
  | { readonly type: 'sorry'; readonly message: string }
  /** Bring the row of this line into view; `mark` when the cursor stands there. */
  | { readonly type: 'reveal'; readonly line: number; readonly mark: boolean };

export type FromPage =
  | { readonly type: 'ready' }
  | { readonly type: 'kind'; readonly kind: GuideKind }
  | { readonly type: 'units'; readonly unitOrder: UnitOrder }
  | { readonly type: 'choose' | 'print' | 'html' | 'pdf' }
  /** A row was clicked: go to its line. */
  | { readonly type: 'goTo'; readonly line: number }
  /** The page was scrolled; this line is at its top now. */
  | { readonly type: 'scrolled'; readonly line: number };

/** What the page keeps so that the editor can bring it back after a restart. */
export interface PageState {
  readonly uri: string;
  readonly kind: GuideKind;
}
