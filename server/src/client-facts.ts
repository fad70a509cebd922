// What the client said it can do, as far as answers differ by it.
import { type InitializeParams, PositionEncodingKind } from 'vscode-languageserver';
import type { StartOptions } from './protocol.js';
import type { ClientFacts } from './snapshot.js';
import { languageFor } from './texts/index.js';

export function clientFacts({
  capabilities: can,
  initializationOptions,
  locale,
}: InitializeParams): ClientFacts {
  const start = initializationOptions as Partial<StartOptions> | undefined;
  const encodings = can.general?.positionEncodings ?? [];
  const first = encodings.find((e) => e === PositionEncodingKind.UTF16 || e === PositionEncodingKind.UTF8);
  return {
    encoding: first === PositionEncodingKind.UTF8 ? 'utf-8' : 'utf-16',
    snippets: can.textDocument?.completion?.completionItem?.snippetSupport ?? false,
    insertReplace: can.textDocument?.completion?.completionItem?.insertReplaceSupport ?? false,
    documentChanges: can.workspace?.workspaceEdit?.documentChanges ?? false,
    resolvesEdits: can.textDocument?.codeAction?.resolveSupport?.properties.includes('edit') ?? false,
    linkTargets: can.textDocument?.definition?.linkSupport ?? false,
    asksAgain: typeof start?.filesByClient === 'boolean',
    showsUses: start?.showsUses ?? false,
    showsPages: start?.showsPages ?? false,
    readsSettings: start?.settingsBySchema ?? false,
    language: languageFor(locale ?? start?.locale),
  };
}
