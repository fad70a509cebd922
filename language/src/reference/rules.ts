// The page of house rules: the words, the states they may ask for, the starter pack; and the page of usual cautions.
import { STARTER_TEXT } from '../rules/starter.js';
import { stateWords } from '../rules/state-words.js';
import { HAZARDS, type HazardTrigger } from '../vocabulary/hazards.js';
import { THING_KINDS, type ThingKind } from '../vocabulary/kinds.js';
import { RULE_WORDS, type RuleWordDef } from '../vocabulary/rule-words.js';
import { bay, code, codes, type Page, page, table } from './markdown.js';

const PARTS: readonly (readonly [RuleWordDef['part'], string])[] = [
  ['head', 'Words that open a rule'],
  ['tail', 'Words that say what it asks'],
  ['pattern', 'Words that pick out acts and things'],
];

export function rulePages(): Page[] {
  return [rulePage(), cautionPage()];
}

function rulePage(): Page {
  const kinds: readonly ThingKind[] = [...THING_KINDS, 'machine'];
  const states = kinds
    .map((kind) => [kind, stateWords(kind)] as const)
    .filter(([, words]) => words.length > 0);
  return page(
    'rules.md',
    'House rules',
    'A rule stands in section `rules` of a catalogue or a procedure and binds every procedure that uses the file. It is followed on every path, side and variant. Each of its lines holds one clause, or several parted by commas.',
    ...PARTS.flatMap(([part, title]) => [
      `## ${title}`,
      ...RULE_WORDS.filter((word) => word.part === part).flatMap(ruleWord),
    ]),
    '## States',
    'Words for `while`. A condition has its own values, a part with `positions` those.',
    table(
      ['Kind', 'States'],
      states.map(([kind, words]) => [kind === 'machine' ? code('vehicle') : kind, codes(words)]),
    ),
    '## Starter pack',
    'These rules of usual practice are on by default (common practice, no source). A house rule that asks the same takes the place of one; a setting switches one off, with the reason.',
    bay(STARTER_TEXT),
  );
}

function ruleWord({ word, docs, example }: RuleWordDef): string[] {
  return [`### ${word}`, docs, bay(example.map((line) => `    ${line}`).join('\n'), 'rule')];
}

function cautionPage(): Page {
  return page(
    'cautions.md',
    'Usual cautions',
    "Where the verbs, marks or fluids of a procedure call for one of these and no message before the action speaks of it, the checker asks for it and a fix inserts the text. All of it is common practice: local codes, the maker's data and licensed practice come first.",
    table(
      ['Hazard', 'Called for by', 'Signal', 'Usual text'],
      HAZARDS.map((hazard) => [
        hazard.title,
        hazard.triggers.map(triggerWords).join('; or '),
        hazard.signal,
        hazard.text.en,
      ]),
    ),
  );
}

function triggerWords(trigger: HazardTrigger): string {
  const parts: readonly (readonly [string, readonly string[] | undefined])[] = [
    ['', trigger.verbs],
    ['on', trigger.machines],
    ['a thing named', trigger.names],
    ['marked', trigger.marks],
    ['with', trigger.families],
    ['with a supply marked', trigger.supplies],
    ['the filler of', trigger.fillerOf],
  ];
  const words = parts.flatMap(([lead, values]) =>
    values === undefined ? [] : [`${lead} ${codes(values)}`.trim()],
  );
  return [...words, ...(trigger.engineRuns ? ['while the engine runs'] : [])].join(' ');
}
