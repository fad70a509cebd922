// Signature help: what a verb takes, clause by clause, with the one at the cursor marked; below an entry, what stands in
// its clause.
import {
  type ClauseDef,
  ENTRY_CLAUSES,
  HEADS_IN,
  STEP_CLAUSE_BY_WORD,
  VERB_BY_WORD,
  type VerbDef,
  verbMeant,
} from '@baywright/language';
import type { ParameterInformation, SignatureHelp, SignatureHelpParams } from 'vscode-languageserver';
import type { Texts } from '../texts/index.js';
import { type Cursor, cursorAt } from './completion/cursor.js';
import { lastClause } from './completion/statement.js';
import { rawOffers } from './completion/values.js';
import { documentFeature } from './feature.js';

export const signature = documentFeature<SignatureHelpParams>(
  'textDocument/signatureHelp',
  { signatureHelpProvider: { triggerCharacters: [' ', ','] } },
  (snapshot, { position }): SignatureHelp | null => {
    const cursor = cursorAt(snapshot, snapshot.positions.offset(position));
    if (!cursor) return null;
    if (cursor.context === 'entry') return ofClause(snapshot.say, cursor);
    const verb = verbOf(cursor);
    return verb ? ofVerb(snapshot.say, verb, cursor.before) : null;
  },
);

/** The verb of the line, or of the statement that the line goes on with. */
function verbOf({ context, before, parent }: Cursor): VerbDef | undefined {
  const word = /^\S+/.exec(before)?.[0] ?? '';
  // Below a statement stand its further clauses, and lines of their own: tests, texts, pictures.
  if (context === 'statement')
    return parent?.kind === 'statement' && before !== '' && !HEADS_IN.get('statement')?.has(word)
      ? VERB_BY_WORD.get(parent.verb.text)
      : undefined;
  const isWork = context === 'step' || context === 'work' || context === 'operation';
  return isWork ? verbMeant(word) : undefined;
}

function ofVerb(say: Texts, verb: VerbDef, before: string): SignatureHelp {
  const object: Parameter[] =
    verb.object === 'none'
      ? []
      : [
          {
            label: Object.keys(verb.on).join(' | '),
            documentation: verb.object === 'optional' ? say.mayBeLeftOut : say.oneOrMore,
          },
        ];
  const bare: Parameter[] = verb.bare
    ? [{ label: (verb.bare.quantity ?? ['amount']).join(' | '), documentation: verb.bare.docs }]
    : [];
  const clauses = Object.entries(verb.clauses).map(
    ([word, slot]): Parameter => ({
      label: [word, slot.names?.join(' | ') ?? slot.quantity?.join(' | ') ?? worded(word)]
        .filter(Boolean)
        .join(' '),
      documentation: slot.docs,
      word,
    }),
  );
  const parameters = [...object, ...bare, ...clauses];
  const at = lastClause(` ${before}`, Object.keys(verb.clauses));
  const active = at ? parameters.findIndex((p) => p.word === at.word) : 0;
  return help([verb.word, ...parameters.map((p) => `[${p.label}]`)].join(' '), verb.docs, parameters, active);
}

/** Of the clause of an entry that the cursor stands in; none behind a comma, where the next is chosen. */
function ofClause(say: Texts, { before, declares }: Cursor): SignatureHelp | null {
  const own = ENTRY_CLAUSES.filter((c) => declares === undefined || c.on.includes(declares));
  const at = lastClause(
    ` ${before}`,
    own.map((c) => c.word),
  );
  const def = at && own.find((c) => c.word === at.word);
  if (!def || !at || (def.shape !== 'names' && before.slice(at.end - 1).includes(','))) return null;
  const label = whatStands(def);
  if (label === undefined) return null;
  const documentation = def.shape === 'names' ? say.oneOrMore : '';
  return help(`${def.word} ${label}`, def.docs, [{ label, documentation }], 0);
}

function whatStands(def: ClauseDef): string | undefined {
  switch (def.shape) {
    case 'names':
      return def.names?.join(' | ');
    case 'spec':
      return def.unitless ? 'number' : (def.quantity?.join(' | ') ?? 'quantity');
    case 'raw':
      return valuesOf(def.word);
    case 'option':
      return 'name value, value';
    case 'words':
      return '…';
    default:
      return undefined;
  }
}

/** What stands behind the word of a step's clause that takes neither things nor a figure; nothing behind a flag. */
function worded(word: string): string {
  return STEP_CLAUSE_BY_WORD.get(word)?.shape === 'flag' ? '' : valuesOf(word);
}

/** The first of the values that a word has, or of what kind they are. */
function valuesOf(word: string): string {
  const known = rawOffers(word).map((offer) => offer.label);
  if (known.length === 0) return word === 'per' ? 'source' : '…';
  return `${known.slice(0, 6).join(' | ')}${known.length > 6 ? ' | …' : ''}`;
}

interface Parameter extends ParameterInformation {
  readonly label: string;
  readonly word?: string;
}

function help(
  label: string,
  documentation: string,
  parameters: readonly Parameter[],
  active: number,
): SignatureHelp {
  return {
    signatures: [
      {
        label,
        documentation,
        parameters: parameters.map((p) => ({ label: p.label, documentation: p.documentation ?? '' })),
      },
    ],
    activeSignature: 0,
    activeParameter: Math.max(0, active),
  };
}
