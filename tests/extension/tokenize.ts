// Runs the editor grammar over a text, as the editor does, and gives the scopes of each piece.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { createOnigScanner, createOnigString, loadWASM } from 'vscode-oniguruma';
import textmate, { type IGrammar } from 'vscode-textmate';

const GRAMMAR_FILE = new URL('../../extension/syntaxes/baywright.tmLanguage.json', import.meta.url);

export interface Piece {
  readonly line: number;
  readonly text: string;
  /** Scope names without the language suffix, the outermost (`source`) left away, joined by a space. */
  readonly scopes: string;
}

export async function loadGrammar(): Promise<IGrammar> {
  const wasm = createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm');
  await loadWASM(readFileSync(wasm).buffer);
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({ createOnigScanner, createOnigString }),
    loadGrammar: async () =>
      textmate.parseRawGrammar(readFileSync(GRAMMAR_FILE, 'utf8'), GRAMMAR_FILE.pathname),
  });
  const grammar = await registry.loadGrammar('source.baywright');
  if (!grammar) throw new Error('the grammar did not load');
  return grammar;
}

export function tokenize(grammar: IGrammar, text: string): Piece[] {
  let stack = textmate.INITIAL;
  return text.split('\n').flatMap((line, index) => {
    const result = grammar.tokenizeLine(line, stack);
    stack = result.ruleStack;
    return result.tokens.map((token) => ({
      line: index,
      text: line.slice(token.startIndex, token.endIndex),
      scopes: token.scopes
        .slice(1)
        .map((scope) => scope.replace(/\.baywright$/, ''))
        .join(' '),
    }));
  });
}
