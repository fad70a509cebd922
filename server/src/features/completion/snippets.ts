// Snippets for what is written most: a step, a part, a fastener, a procedure.
import type { LineContext } from '@baywright/language';
import { CompletionItemKind } from 'vscode-languageserver';
import type { Texts } from '../../texts/index.js';
import type { Offer } from './answer.js';

/** A stop of a snippet with the text it starts with, as the protocol writes it. */
const stop = (n: number, text: string): string => `\${${n}:${text}}`;

interface Snippet {
  readonly contexts: readonly LineContext[];
  readonly label: string;
  readonly docs: 'stepSnippet' | 'partSnippet' | 'fastenerSnippet' | 'procedureSnippet';
  readonly insert: string;
}

export function snippetOffers(say: Texts, context: LineContext): Offer[] {
  return SNIPPETS.filter((s) => s.contexts.includes(context)).map(({ label, docs, insert }) => ({
    label,
    kind: CompletionItemKind.Snippet,
    insert,
    snippet: true,
    docs: say[docs],
  }));
}

const SNIPPETS: readonly Snippet[] = [
  snippet(['work', 'operation'], 'step …', 'stepSnippet', `step: ${stop(1, 'Title')}\n  $0`),
  snippet(
    ['declarations'],
    'part …',
    'partSnippet',
    `${stop(1, 'name')}: ${stop(2, 'Title')}\n  held by ${stop(3, 'fastener')}$0`,
  ),
  snippet(
    ['declarations'],
    'fastener …',
    'fastenerSnippet',
    `${stop(1, 'name')}: ${stop(2, 'Title')}\n  ${stop(3, '4')} of ${stop(4, 'M8x1.25')}, hex ${stop(5, '13 mm')}\n  torque ${stop(6, '?')}$0`,
  ),
  snippet(['file'], 'procedure …', 'procedureSnippet', procedureText()),
];

function snippet(
  contexts: readonly LineContext[],
  label: string,
  docs: Snippet['docs'],
  insert: string,
): Snippet {
  return { contexts, label, docs, insert };
}

function procedureText(): string {
  return `procedure ${stop(1, '?')}: ${stop(2, 'Title')}

applies to ${stop(3, 'vehicle')}
labour ${stop(4, '1 h')}
status draft

parts
  ${stop(5, 'part')}: ${stop(6, 'Title')}

fasteners
  ${stop(7, 'bolt')}: ${stop(8, 'Title')}
    ${stop(9, '4')} of ${stop(10, 'M8x1.25')}
    torque ${stop(11, '?')}

removal
  step: ${stop(12, 'Take it off')}
    $0
`;
}
