// Completion: what may stand at the cursor, asked of the tables, the names and the state of the vehicle at the line.
import {
  ENTRY_CLAUSE_BY_WORD,
  HEADS_IN,
  type LineContext,
  VERB_BY_WORD,
  VERBS,
  verbMeant,
} from '@baywright/language';
import {
  type CompletionItem,
  CompletionItemTag,
  type CompletionList,
  type CompletionParams,
  InsertTextFormat,
  MarkupKind,
} from 'vscode-languageserver';
import type { Snapshot } from '../snapshot.js';
import { type Offer, word } from './completion/answer.js';
import { goingOn } from './completion/begun.js';
import { type Cursor, cursorAt } from './completion/cursor.js';
import { entryOffers } from './completion/entry.js';
import { leavingOffers } from './completion/file-lines.js';
import { behindHead, firstWordOffers, headOffers } from './completion/heads.js';
import { proseOffers } from './completion/prose.js';
import { ruleOffers } from './completion/rules.js';
import { statementOffers } from './completion/statement.js';
import { kindOffers, valueOffers } from './completion/things.js';
import { undeclaredOffers } from './completion/undeclared.js';
import { documentFeature, libraryFeature } from './feature.js';
import { thingCard } from './hover/thing.js';
import { settingsCompletion } from './settings-file/completion.js';

export const completion = documentFeature<CompletionParams>(
  'textDocument/completion',
  { completionProvider: { triggerCharacters: [' ', '{', '"'], resolveProvider: true } },
  (snapshot, { position }): CompletionList | null => {
    const cursor = cursorAt(snapshot, snapshot.positions.offset(position));
    if (!cursor) return null;
    const leaving = leavingAt(snapshot, cursor);
    // The next step is what is begun most.
    const isNext = ({ label }: Offer): boolean => cursor.word !== '' && label === 'step';
    const all = [
      ...leaving.filter(isNext),
      ...offersAt(snapshot, cursor),
      ...leaving.filter((offer) => !isNext(offer)),
    ];
    const heads = all.length === 0 && cursor.context !== 'text' ? headsOf(cursor.context) : all;
    const { offers, cursor: at } = goingOn(heads, cursor) ?? { offers: all, cursor };
    const items = offers.slice(0, MOST).map((offer, i) => itemOf(snapshot, offer, at, i));
    return { isIncomplete: false, items };
  },
  settingsCompletion,
);

const MOST = 400;

/** At the beginning of an indented line, what ends its block too. */
function leavingAt(snapshot: Snapshot, cursor: Cursor): Offer[] {
  const { context, before, replaces, lineStart } = cursor;
  const isBlank = before === '' && replaces.start > lineStart && context !== 'file' && context !== 'text';
  // Whoever types the name of a new entry is not to be told of every section with the same letters in it.
  return isBlank ? leavingOffers(snapshot, cursor).filter((o) => o.label.startsWith(cursor.word)) : [];
}

const headsOf = (context: Cursor['context']): Offer[] =>
  context === 'rule' || context === 'text' ? [] : headOffers(context);

export function offersAt(snapshot: Snapshot, cursor: Cursor): Offer[] {
  const { context, before } = cursor;
  if (context === 'text') return proseOffers(snapshot, cursor.reference ?? '');
  if (context === 'rule') return ruleOffers(snapshot, cursor);
  if (context === 'entry')
    return cursor.declares === 'condition' && before === '' ? [] : entryOffers(snapshot, cursor);
  if (context === 'declarations')
    return before === ''
      ? [
          ...undeclaredOffers(snapshot, cursor.declares ?? 'part'),
          ...firstWordOffers(snapshot, cursor, 'declarations'),
        ]
      : [];
  const head = behindHead(snapshot, cursor);
  if (head) return head;
  if (before === '')
    return context === 'statement'
      ? belowStatement(cursor)
      : context === 'prerequisites'
        ? prerequisites(snapshot, cursor)
        : firstWordOffers(snapshot, cursor, context);
  if (context === 'prerequisites')
    return /,\s*$/.test(before)
      ? [word('rated', ENTRY_CLAUSE_BY_WORD.get('rated')?.docs ?? '', { insert: 'rated ' })]
      : valueOffers(snapshot, before);
  if (context === 'statement' && cursor.parent?.kind === 'statement') {
    const verb = VERB_BY_WORD.get(cursor.parent.verb.text);
    return verb ? statementOffers(snapshot, cursor, verb, ` ${before}`) : [];
  }
  return behindVerb(snapshot, cursor, context);
}

function behindVerb(snapshot: Snapshot, cursor: Cursor, context: LineContext): Offer[] {
  const { before } = cursor;
  const word = /^\S+/.exec(before)?.[0] ?? '';
  if (HEADS_IN.get(context)?.has(word) && !VERB_BY_WORD.has(word)) return [];
  const verb = verbMeant(word);
  return verb ? statementOffers(snapshot, cursor, verb, before.slice(word.length)) : [];
}

/** Below a statement stand its further clauses, and lines of text. */
function belowStatement(cursor: Cursor): Offer[] {
  const verb = cursor.parent?.kind === 'statement' ? VERB_BY_WORD.get(cursor.parent.verb.text) : undefined;
  const there = new Set(cursor.parent?.kind === 'statement' ? cursor.parent.clauses.map((c) => c.word) : []);
  const clauses = Object.entries(verb?.clauses ?? {})
    .filter(([w]) => !there.has(w))
    .map(([w, slot]) => word(w, slot.docs, { insert: `${w} ` }));
  return [...clauses, ...headOffers('statement')];
}

function prerequisites(snapshot: Snapshot, cursor: Cursor): Offer[] {
  return [
    ...kindOffers(snapshot.job(), ['tool', 'condition']),
    ...firstWordOffers(snapshot, cursor, 'prerequisites'),
  ];
}

/** Docs come when an item is looked at: of verbs from their table, of things from their declaration. */
export const resolveCompletion = libraryFeature<CompletionItem>(
  'completionItem/resolve',
  {},
  (view, item): CompletionItem => {
    const data = item.data as { uri?: string; name?: string } | undefined;
    const snapshot = data?.uri === undefined ? undefined : view.snapshot(data.uri);
    const verb = VERBS.find((v) => v.word === item.label);
    const thing = data?.name === undefined ? undefined : snapshot?.job().scope.resolve(data.name);
    const card =
      thing && snapshot
        ? thingCard(snapshot, thing)
        : verb
          ? `${verb.docs}\n\n\`\`\`baywright\n${verb.example}\n\`\`\``
          : undefined;
    if (card === undefined) return item;
    // What the offer already says, such as why it cannot be done yet, stays above the card of the thing.
    const said = thing && typeof item.documentation === 'object' ? `${item.documentation.value}\n\n` : '';
    return { ...item, documentation: { kind: MarkupKind.Markdown, value: said + card } };
  },
);

/** What a shop says for it, where that is being typed: other such words would only be found by chance. */
function saidFor({ label, alsoSaid = [] }: Offer, word: string): string[] {
  return word === '' || label.startsWith(word) ? [] : alsoSaid.filter((each) => each.startsWith(word));
}

function itemOf(snapshot: Snapshot, offer: Offer, cursor: Cursor, i: number): CompletionItem {
  const { wordEnd, lineStart } = cursor;
  const said = saidFor(offer, cursor.word);
  const indent = offer.column === undefined ? '' : snapshot.text.slice(lineStart, cursor.replaces.start);
  const replaces = { ...cursor.replaces, start: cursor.replaces.start - indent.length };
  const newText = ' '.repeat(offer.column ?? 0) + (offer.insert ?? offer.label);
  const insert = snapshot.range(replaces);
  // In the middle of a word, the user chooses whether the rest of it goes.
  const isWithin = snapshot.client.insertReplace && wordEnd > replaces.end;
  return {
    label: offer.label,
    kind: offer.kind,
    // Behind what the words themselves begin.
    sortText: `${said.length > 0 ? 1 : 0}${String(i).padStart(4, '0')}`,
    filterText: newText.startsWith('"') ? newText : indent + [...said, offer.label].join(' '),
    textEdit: isWithin
      ? { newText, insert, replace: snapshot.range({ start: replaces.start, end: wordEnd }) }
      : { range: insert, newText },
    insertTextFormat: offer.snippet ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
    ...(offer.detail === undefined ? {} : { detail: offer.detail }),
    ...(offer.docs === undefined ? {} : { documentation: { kind: MarkupKind.Markdown, value: offer.docs } }),
    ...(offer.also
      ? { additionalTextEdits: offer.also.map((e) => ({ range: snapshot.range(e.span), newText: e.text })) }
      : {}),
    ...(offer.withdrawn ? { tags: [CompletionItemTag.Deprecated] } : {}),
    ...(offer.goesOn && snapshot.client.asksAgain
      ? { command: { title: '', command: 'editor.action.triggerSuggest' } }
      : {}),
    data: { uri: snapshot.uri, name: offer.label },
  };
}
