// The pages of verbs: what each acts on, needs and makes, its clauses, and its sentence in every output language.

import { VERBS } from '../verbs/index.js';
import { SAID_FOR } from '../verbs/said-for.js';
import { STEP_CLAUSE_BY_WORD } from '../vocabulary/clauses.js';
import { LANGUAGES } from '../vocabulary/kinds.js';
import { MAKES, NEEDS } from '../vocabulary/needs.js';
import type { ClauseSlot, Effect, VerbDef } from '../vocabulary/verb.js';
import { bay, code, codes, type Page, page, table } from './markdown.js';
import { LANGUAGE_NAMES } from './names.js';

export function verbPages(): Page[] {
  return [index(), ...VERBS.map(verbPage)];
}

function index(): Page {
  const rows = VERBS.map((verb) => [
    `[${verb.word}](${verb.word}.md)`,
    Object.keys(verb.on).join(', ') || 'nothing',
    firstSentence(verb.docs),
  ]);
  const said = [...SAID_FOR].map(([word, verb]) => [word, `[${verb}](${verb}.md)`]);
  return page(
    'verbs/README.md',
    'Verbs',
    'A statement is a verb, the things it acts on, and clauses. Each verb has its page: what must hold before it, what it changes, and what a guide prints for it.',
    table(['Verb', 'Acts on', 'What it does'], rows),
    '## Words that are not verbs here',
    'One word for one thing keeps guides clear. For these the checker names the verb to use (common practice, no source).',
    table(['Said', 'Write'], said),
  );
}

function verbPage(verb: VerbDef): Page {
  const effects = together([
    ...Object.entries(verb.on).map(([kind, effect]) => effectRow(kindWords(verb, kind), effect)),
    ...(verb.alone ? [effectRow('(alone)', verb.alone)] : []),
  ]);
  const clauses = Object.entries(verb.clauses).map(([word, slot]) => [
    code(word),
    takes(word, slot),
    `${slot.docs}${slot.required ? ' Always needed.' : ''}`,
  ]);
  const said = [...SAID_FOR].filter(([, meant]) => meant === verb.word).map(([word]) => word);
  return page(
    `verbs/${verb.word}.md`,
    verb.word,
    verb.docs,
    bay(verb.example, 'statement'),
    '## What it needs and makes',
    table(['On', 'Needs, in this order', 'Then'], effects),
    objectWords(verb),
    verb.wholeVehicle
      ? 'It asks for the whole vehicle. What is missing is reported at the line that left it so, not here.'
      : undefined,
    '## Clauses',
    clauses.length === 0 ? 'None of its own.' : table(['Clause', 'Takes', 'Says'], clauses),
    'Every statement may also end in `when` with a guard.',
    '## In print',
    `Slots in braces are filled from the line; what stands in square brackets falls away when its slot is empty. In records: ${verb.done}. Hands-on time for one thing, unless the procedure says otherwise: ${verb.minutes} min (common practice).`,
    table(
      ['Language', 'Sentence'],
      LANGUAGES.map((language) => [LANGUAGE_NAMES[language], code(verb.phrase[language])]),
    ),
    ...Object.entries(verb.phraseFor ?? {}).flatMap(([kind, words]) => [
      `Of a ${kind}:`,
      table(
        ['Language', 'Sentence'],
        LANGUAGES.map((language) => [LANGUAGE_NAMES[language], code(words[language])]),
      ),
    ]),
    verb.phraseForValue &&
      [
        'Values with a verb of their own:',
        table(
          ['Value', ...LANGUAGES.map((language) => LANGUAGE_NAMES[language])],
          Object.entries(verb.phraseForValue).map(([value, words]) => [
            code(value),
            ...LANGUAGES.map((language) => code(words[language])),
          ]),
        ),
      ].join('\n\n'),
    said.length === 0 ? undefined : `Shops also say: ${said.join(', ')}.`,
  );
}

function effectRow(on: string, effect: Effect): string[] {
  const needs = effect.needs.map((need) => NEEDS[need]).join('; ');
  const makes = effect.makes.map((make) => MAKES[make]).join('; ');
  return [on, needs === '' ? 'nothing' : needs, makes === '' ? 'an event that house rules see' : makes];
}

/** Kinds that a verb treats alike share a row. */
function together(rows: readonly (readonly string[])[]): string[][] {
  const kinds = new Map<string, string[]>();
  for (const [on = '', ...rest] of rows) {
    const key = rest.join('|');
    kinds.set(key, [...(kinds.get(key) ?? []), on]);
  }
  return [...kinds].map(([key, on]) => [on.join(', '), ...key.split('|')]);
}

function kindWords(verb: VerbDef, kind: string): string {
  return kind === 'machine' ? codes(verb.machines ?? []) : kind;
}

function objectWords(verb: VerbDef): string {
  const isMachine = verb.object !== 'none' && Object.keys(verb.on).every((kind) => kind === 'machine');
  const object = isMachine
    ? `It takes ${codes(verb.machines ?? [])}.`
    : {
        none: 'It takes no object.',
        'one or more': 'It takes one thing or several, parted by commas.',
        optional: 'It may stand alone or with things, parted by commas.',
      }[verb.object];
  return [
    object,
    verb.takesCount ? 'Before fasteners a count may stand: `2 of cover-bolt`.' : '',
    verb.takesValue ? 'The value follows the object.' : '',
    verb.bare ? `After the object: ${slotKinds(verb.bare)}. ${verb.bare.docs}` : '',
  ]
    .filter((text) => text !== '')
    .join(' ');
}

function takes(word: string, slot: ClauseSlot): string {
  const shape = STEP_CLAUSE_BY_WORD.get(word)?.shape;
  const known = slotKinds(slot);
  if (known !== '') return known;
  return { flag: 'nothing', event: 'an act', words: 'a word', raw: 'text' }[String(shape)] ?? 'text';
}

const slotKinds = ({ names = [], quantity = [] }: ClauseSlot): string => [...names, ...quantity].join(', ');

const firstSentence = (docs: string): string => /^.*?\.(?=\s|$)/.exec(docs)?.[0] ?? docs;
