// The table of features. One row registers a request and says what the server can do; pull diagnostics, which need
// the checker's answers, stand beside it in pull.ts.
import type { ServerCapabilities } from 'vscode-languageserver';
import { incomingCalls, outgoingCalls, prepareCalls } from './calls.js';
import { codeActions, resolveCodeAction } from './code-actions.js';
import { completion, resolveCompletion } from './completion.js';
import { check, questions } from './custom/check.js';
import { explain } from './custom/explain.js';
import { choices, issue, preview, print, sign } from './custom/guides.js';
import { library } from './custom/library.js';
import { order } from './custom/order.js';
import { state } from './custom/state.js';
import { declaration, definition, implementation } from './definition.js';
import type { Feature } from './feature.js';
import { folding, selection } from './folding.js';
import { formatting, onTypeFormatting, rangeFormatting, rangesFormatting } from './formatting.js';
import { hover } from './hover.js';
import { inlay } from './inlay.js';
import { lens } from './lens.js';
import { linkedEditing } from './linked-editing.js';
import { links } from './links.js';
import { pullDiagnostics } from './pull.js';
import { highlight, references } from './references.js';
import { prepareRename, rename } from './rename.js';
import { renameFiles } from './rename-files.js';
import { tokensDelta, tokensFull, tokensRange } from './semantic-tokens.js';
import { signature } from './signature.js';
import { documentSymbols, workspaceSymbols } from './symbols.js';

export const FEATURES: readonly Feature[] = [
  completion,
  resolveCompletion,
  hover,
  signature,
  definition,
  declaration,
  implementation,
  references,
  highlight,
  prepareRename,
  rename,
  linkedEditing,
  documentSymbols,
  workspaceSymbols,
  links,
  prepareCalls,
  incomingCalls,
  outgoingCalls,
  folding,
  selection,
  inlay,
  lens,
  tokensFull,
  tokensRange,
  tokensDelta,
  formatting,
  rangeFormatting,
  rangesFormatting,
  onTypeFormatting,
  codeActions,
  resolveCodeAction,
  renameFiles,
  pullDiagnostics,
  choices,
  state,
  preview,
  order,
  library,
  check,
  questions,
  explain,
  print,
  sign,
  issue,
];

/** What the server says it can do: the rows together. */
export function capabilities(): ServerCapabilities {
  const all: Record<string, unknown> = {};
  for (const { capability } of FEATURES) {
    for (const [key, value] of Object.entries(capability)) {
      const before = all[key];
      all[key] = typeof before === 'object' && typeof value === 'object' ? { ...before, ...value } : value;
    }
  }
  return all;
}
