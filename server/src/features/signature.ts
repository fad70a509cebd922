// Signature help: what a verb takes, clause by clause, with the one at the cursor marked.
import { VERB_BY_WORD } from '@baywright/language';
import type { SignatureHelp, SignatureHelpParams } from 'vscode-languageserver';
import { cursorAt } from './completion/cursor.js';
import { lastClause } from './completion/statement.js';
import { documentFeature } from './feature.js';

export const signature = documentFeature<SignatureHelpParams>(
  'textDocument/signatureHelp',
  { signatureHelpProvider: { triggerCharacters: [' ', ','] } },
  (snapshot, { position }): SignatureHelp | null => {
    const cursor = cursorAt(snapshot, snapshot.positions.offset(position));
    const word = cursor && /^\S+/.exec(cursor.before)?.[0];
    const verb = word === undefined ? undefined : VERB_BY_WORD.get(word);
    if (
      !cursor ||
      !verb ||
      (cursor.context !== 'step' && cursor.context !== 'work' && cursor.context !== 'operation')
    )
      return null;
    const object =
      verb.object === 'none'
        ? []
        : [
            {
              label: Object.keys(verb.on).join(' | '),
              documentation: verb.object === 'optional' ? snapshot.say.mayBeLeftOut : snapshot.say.oneOrMore,
            },
          ];
    const bare = verb.bare
      ? [{ label: (verb.bare.quantity ?? ['amount']).join(' | '), documentation: verb.bare.docs }]
      : [];
    const clauses = Object.entries(verb.clauses).map(([w, slot]) => ({
      label: `${w} ${slot.names?.join(' | ') ?? slot.quantity?.join(' | ') ?? '…'}`,
      documentation: slot.docs,
      word: w,
    }));
    const parameters = [...object, ...bare, ...clauses];
    const label = [verb.word, ...parameters.map((p) => `[${p.label}]`)].join(' ');
    const at = lastClause(cursor.before, Object.keys(verb.clauses));
    const active = at ? parameters.findIndex((p) => 'word' in p && p.word === at.word) : 0;
    return {
      signatures: [
        {
          label,
          documentation: verb.docs,
          parameters: parameters.map(({ label: own, documentation }) => ({ label: own, documentation })),
        },
      ],
      activeSignature: 0,
      activeParameter: Math.max(0, active),
    };
  },
);
