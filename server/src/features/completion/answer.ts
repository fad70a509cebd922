// One completion, before it becomes an item of the protocol.
import type { TextEdit, Thing } from '@baywright/language';
import { CompletionItemKind } from 'vscode-languageserver';

export interface Offer {
  readonly label: string;
  readonly kind: CompletionItemKind;
  /** Text to insert; the label when absent. `$1` and `$0` are stops when `snippet`. */
  readonly insert?: string;
  readonly snippet?: boolean;
  readonly detail?: string;
  readonly docs?: string;
  /** What else is written when it is accepted: an import for a name of a file that is not used yet. */
  readonly also?: readonly TextEdit[];
  /** What a technician may type when this is meant: `fit` for `install`. */
  readonly alsoSaid?: readonly string[];
  /** It stands at this column, wherever the cursor does: the blanks before the word are replaced too. */
  readonly column?: number;
  /** Out of date: shown struck out. */
  readonly withdrawn?: boolean;
  /** Ask again at once: what follows is a choice too. */
  readonly goesOn?: boolean;
}

export const word = (label: string, docs: string, more: Partial<Offer> = {}): Offer => ({
  label,
  kind: CompletionItemKind.Keyword,
  docs,
  ...more,
});
export const value = (label: string, detail?: string): Offer => ({
  label,
  kind: CompletionItemKind.Value,
  ...(detail === undefined ? {} : { detail }),
});

export function thingOffer(thing: Thing, more: Partial<Offer> = {}): Offer {
  return {
    label: thing.name,
    kind: KINDS[thing.kind] ?? CompletionItemKind.Variable,
    detail: thing.title,
    ...more,
  };
}

const KINDS: Readonly<Partial<Record<Thing['kind'], CompletionItemKind>>> = {
  part: CompletionItemKind.Class,
  fastener: CompletionItemKind.Field,
  connection: CompletionItemKind.Interface,
  fluid: CompletionItemKind.Property,
  condition: CompletionItemKind.Enum,
  place: CompletionItemKind.Reference,
  tool: CompletionItemKind.Struct,
  operation: CompletionItemKind.Function,
  source: CompletionItemKind.File,
  vehicle: CompletionItemKind.Module,
  limit: CompletionItemKind.Constant,
};
