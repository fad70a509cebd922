// The words that open a line besides verbs and clause words: where they may stand and what stands behind their
// colon. Layout, parser, completion, hover and reference read this table.

/** Where a line stands. It decides which words may open the line. */
export const LINE_CONTEXTS = [
  'file',
  'prerequisites',
  'declarations',
  'entry',
  'work',
  'operation',
  'step',
  'statement',
] as const;
export type LineContext = (typeof LINE_CONTEXTS)[number];

/** Each context in words that end "does not stand …". */
export const CONTEXT_WORDS: Readonly<Record<LineContext, string>> = {
  file: 'at the left edge of the file',
  prerequisites: 'under `prerequisites`',
  declarations: 'among the entries of a section',
  entry: 'under an entry',
  work: 'in a section of work',
  operation: 'in an operation',
  step: 'in a step',
  statement: 'under a statement',
};

/**
 * What stands behind the colon and below.
 * - `titled`: a title, which the line may not go without; code below.
 * - `prose`: the text, on the line or below it; no code below.
 * - `block`: a remark on the line; code below, so the colon may not end the line.
 * - `plain`: a remark; below a colon that ends the line its text, else code.
 */
export type HeadClass = 'titled' | 'prose' | 'block' | 'plain';

/** The kind of line of the syntax tree that a head opens. */
type HeadKind =
  | 'procedure'
  | 'catalogue'
  | 'use'
  | 'applies'
  | 'sides'
  | 'labour'
  | 'crew'
  | 'revision'
  | 'status'
  | 'review'
  | 'accept'
  | 'operation'
  | 'step'
  | 'message'
  | 'text'
  | 'picture'
  | 'clip'
  | 'perform'
  | 'when'
  | 'if'
  | 'otherwise'
  | 'repeat';

export interface HeadDef {
  readonly word: string;
  readonly kind: HeadKind;
  readonly class: HeadClass;
  readonly contexts: readonly LineContext[];
  /** True when nothing but its text stands on the line: the colon alone may follow. */
  readonly bare?: true;
  readonly docs: string;
}

const file = (word: string, kind: HeadKind, cls: HeadClass, docs: string): HeadDef => ({
  word,
  kind,
  class: cls,
  contexts: ['file'],
  docs,
});

const STEPS: readonly LineContext[] = ['work', 'operation'];
const WORK: readonly LineContext[] = [...STEPS, 'step'];
const ACTS: readonly LineContext[] = [...WORK, 'statement'];
const ANYWHERE: readonly LineContext[] = LINE_CONTEXTS;

export const HEADS: readonly HeadDef[] = [
  file('procedure', 'procedure', 'titled', 'The number and title of the procedure in this file.'),
  file('catalogue', 'catalogue', 'titled', 'A file of declarations and rules that procedures use.'),
  file('use', 'use', 'plain', 'Takes the declarations and rules of another file in.'),
  file('applies to', 'applies', 'plain', 'A vehicle the procedure is for, with model years.'),
  file('sides', 'sides', 'plain', 'The sides the work is done on; the guide is printed for each.'),
  file('labour', 'labour', 'plain', 'The time allowed, by variant if need be.'),
  file('crew', 'crew', 'plain', 'How many technicians it takes.'),
  file('revision', 'revision', 'prose', 'A revision with its day and what changed.'),
  file('status', 'status', 'plain', 'draft, proved, released or withdrawn, by whom and when.'),
  file('review', 'review', 'plain', 'The day by which the procedure must be looked at again.'),
  {
    word: 'accept',
    kind: 'accept',
    class: 'prose',
    contexts: ANYWHERE,
    docs: 'Silences findings of the next line, with the reason.',
  },
  {
    word: 'operation',
    kind: 'operation',
    class: 'titled',
    contexts: ['work'],
    docs: 'A part of the work that other procedures may perform.',
  },
  {
    word: 'step',
    kind: 'step',
    class: 'titled',
    contexts: STEPS,
    docs: 'A step of the work with its title.',
  },
  {
    word: 'item',
    kind: 'text',
    class: 'prose',
    contexts: ['prerequisites'],
    bare: true,
    docs: 'A prerequisite in plain words.',
  },
  {
    word: 'do',
    kind: 'text',
    class: 'prose',
    contexts: ['step'],
    bare: true,
    docs: 'An action in plain words that the checker does not follow.',
  },
  {
    word: 'hold',
    kind: 'text',
    class: 'prose',
    contexts: WORK,
    bare: true,
    docs: 'Work waits here until a second person has looked and initialled.',
  },
  {
    word: 'stop',
    kind: 'text',
    class: 'prose',
    contexts: ['step'],
    bare: true,
    docs: 'The job ends here, with what to do about it.',
  },
  {
    word: 'note',
    kind: 'text',
    class: 'prose',
    contexts: ['entry', ...ACTS],
    bare: true,
    docs: 'A hint that no one gets hurt without.',
  },
  {
    word: 'reject',
    kind: 'text',
    class: 'prose',
    contexts: ['statement'],
    bare: true,
    docs: 'What makes the thing looked at unfit.',
  },
  {
    word: 'expect',
    kind: 'text',
    class: 'prose',
    contexts: ['statement'],
    bare: true,
    docs: 'What a good result looks like.',
  },
  {
    word: 'because',
    kind: 'text',
    class: 'prose',
    contexts: ['entry', ...ACTS],
    bare: true,
    docs: 'Why it is done so; printed in the training version.',
  },
  {
    word: 'danger',
    kind: 'message',
    class: 'prose',
    contexts: ACTS,
    docs: 'Death or grave injury will follow if it is not heeded.',
  },
  {
    word: 'warning',
    kind: 'message',
    class: 'prose',
    contexts: ACTS,
    docs: 'Death or grave injury can follow.',
  },
  {
    word: 'caution',
    kind: 'message',
    class: 'prose',
    contexts: ACTS,
    docs: 'Minor or moderate injury can follow.',
  },
  { word: 'notice', kind: 'message', class: 'prose', contexts: ACTS, docs: 'Damage can follow, no injury.' },
  {
    word: 'picture',
    kind: 'picture',
    class: 'prose',
    contexts: ANYWHERE,
    docs: 'A picture, with the words that stand in for it.',
  },
  {
    word: 'clip',
    kind: 'clip',
    class: 'prose',
    contexts: ACTS,
    docs: 'A place in a film, with what it shows.',
  },
  {
    word: 'perform',
    kind: 'perform',
    class: 'plain',
    contexts: WORK,
    docs: 'Does an operation, of this or another procedure.',
  },
  {
    word: 'when',
    kind: 'when',
    class: 'block',
    contexts: ['prerequisites', 'declarations', 'entry', ...ACTS],
    docs: 'The block below holds for these variants only.',
  },
  {
    word: 'if',
    kind: 'if',
    class: 'block',
    contexts: ACTS,
    docs: 'The block below is done when the result asks for it.',
  },
  {
    word: 'otherwise',
    kind: 'otherwise',
    class: 'block',
    contexts: ACTS,
    bare: true,
    docs: 'The block below is done when the `if` above it is not.',
  },
  { word: 'repeat', kind: 'repeat', class: 'block', contexts: WORK, docs: 'The block below is done again.' },
];

/** The heads of each context by their word. */
export const HEADS_IN: ReadonlyMap<LineContext, ReadonlyMap<string, HeadDef>> = new Map(
  LINE_CONTEXTS.map((context) => [
    context,
    new Map(HEADS.filter((head) => head.contexts.includes(context)).map((head) => [head.word, head])),
  ]),
);
