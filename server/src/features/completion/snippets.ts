// Snippets for what is written most: a step, a part, a fastener, a procedure.
import type { LineContext } from '@baywright/language';
import { CompletionItemKind } from 'vscode-languageserver';
import type { Offer } from './answer.js';

export const SNIPPETS: readonly { readonly contexts: readonly LineContext[]; readonly offer: Offer }[] = [
  snippet(['work', 'operation'], 'step …', 'A step with its first line.', 'step: ${1:Title}\n  $0'),
  snippet(
    ['declarations'],
    'part …',
    'A part with what holds it.',
    '${1:name}: ${2:Title}\n  held by ${3:fastener}$0',
  ),
  snippet(
    ['declarations'],
    'fastener …',
    'A set of fasteners with thread, head and torque.',
    '${1:name}: ${2:Title}\n  ${3:4} of ${4:M8x1.25}, hex ${5:13 mm}\n  torque ${6:?}$0',
  ),
  snippet(['file'], 'procedure …', 'A procedure from its opening line to its hand-back.', procedureText()),
];

function snippet(
  contexts: readonly LineContext[],
  label: string,
  docs: string,
  insert: string,
): { contexts: readonly LineContext[]; offer: Offer } {
  return { contexts, offer: { label, kind: CompletionItemKind.Snippet, insert, snippet: true, docs } };
}

function procedureText(): string {
  return 'procedure ${1:?}: ${2:Title}\n\napplies to ${3:vehicle}\nlabour ${4:1 h}\nstatus draft\n\nparts\n  ${5:part}: ${6:Title}\n\nfasteners\n  ${7:bolt}: ${8:Title}\n    ${9:4} of ${10:M8x1.25}\n    torque ${11:?}\n\nremoval\n  step: ${12:Take it off}\n    $0\n';
}
