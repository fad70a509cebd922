// Every place of a file that names a thing, and in which way: declares it, acts on it, names it in a clause, refers to
// it in text. Navigation, rename and "where used" read it.
import type { Clause, EventPattern, Item, Line, Name, StatePattern, Tree } from '../syntax/tree.js';
import { walkLines } from '../syntax/walk.js';
import { VERB_BY_WORD } from '../verbs/index.js';

export type MentionWay = 'declares' | 'acts on' | 'names' | 'text';

export interface Mention {
  readonly name: Name;
  readonly way: MentionWay;
  readonly line: Line;
  /** Operations have names of their own: `perform wheel-off from WH-01`. `from` is absent for those of the own file. */
  readonly operation?: { readonly from: string | undefined };
  /** The verb, where the thing is its object. */
  readonly verb?: string;
  /** The attribute of a reference in text: `torque` in `{hub-bolt torque}`. */
  readonly attribute?: string;
}

const NOTHING: Partial<Mention> = {};

/** The mentions of one line, in the order written. */
export function mentionsOf(line: Line): Mention[] {
  const found: Mention[] = [];
  const add = (name: Name | undefined, way: MentionWay, more: Partial<Mention> = NOTHING): void => {
    if (!name || name.text === '' || name.text === '?') return;
    found.push(more === NOTHING ? { name, way, line } : { name, way, line, ...more });
  };
  const item = (i: Item, way: MentionWay, more: Partial<Mention> = NOTHING): void => {
    add(i.name, way, more);
    for (const other of i.alternatives) add(other, way, more);
  };
  const clauses = (list: readonly Clause[]): void => {
    for (const clause of list) {
      for (const i of clause.items) item(i, 'names');
      if (clause.event) event(clause.event);
      if (clause.raw && RAW_NAMES.has(clause.word) && !clause.raw.hole) add(rawName(clause.raw), 'names');
    }
  };
  const target = (t: EventPattern['target']): void => {
    if (t?.form === 'names') for (const name of t.names) add(name, 'names');
  };
  const event = (pattern: EventPattern | undefined): void => {
    if (!pattern) return;
    target(pattern.target);
    clauses(pattern.clauses);
  };
  const state = (pattern: StatePattern | undefined): void => target(pattern?.target);

  if ('guard' in line)
    for (const term of line.guard?.terms ?? [])
      if (term.option.text === 'vehicle') for (const name of term.values) add(name, 'names');
  switch (line.kind) {
    case 'entry':
      add(line.name, 'declares');
      break;
    case 'operation':
      add(line.name, 'declares', { operation: { from: undefined } });
      break;
    case 'clauses':
      clauses(line.clauses);
      break;
    case 'prerequisite':
      add(line.name, 'names');
      clauses(line.clauses);
      break;
    case 'statement':
      for (const i of line.items) item(i, 'acts on', { verb: line.verb.text });
      clauses(line.clauses);
      break;
    case 'applies':
      add(line.vehicle, 'names');
      break;
    case 'perform':
      add(line.operation, 'names', {
        operation: { from: line.from && !line.from.hole ? line.from.text : undefined },
      });
      break;
    case 'if':
      add(line.subject, 'names');
      break;
    case 'message':
      add(line.reference, 'names');
      break;
    case 'rule':
      for (const clause of line.clauses) {
        if ('pattern' in clause) event(clause.pattern);
        if (clause.word === 'while') state(clause.state);
        if (clause.word === 'needs' && clause.clause) clauses([clause.clause]);
      }
      break;
    default:
      break;
  }
  for (const reference of line.prose?.references ?? []) {
    add(reference.name, 'text', reference.attribute ? { attribute: reference.attribute.text } : NOTHING);
  }
  return found.length < 2 ? found : found.sort((a, b) => a.name.start - b.name.start);
}

/** All mentions of a file, in the order written. */
export function mentionsIn(tree: Tree): Mention[] {
  const found: Mention[] = [];
  walkLines(tree, (line) => {
    for (const mention of mentionsOf(line)) found.push(mention);
  });
  return found;
}

/** What acting on the thing does to it: takes it apart, puts it together, or neither. */
export function isApart(verb: string | undefined): boolean {
  return verb !== undefined && TAKES_APART.has(verb);
}

/** Raw clauses whose text may be the name of a thing: a sheet, a threadlocker, a lubricant. */
const RAW_NAMES: ReadonlySet<string> = new Set(['per', 'threadlocker', 'lubricant']);

/** The name inside raw text, quotes left out. */
function rawName(raw: {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly quoted: boolean;
}): Name {
  const edge = raw.quoted && raw.end - raw.start === raw.text.length + 2 ? 1 : 0;
  return { text: raw.text, start: raw.start + edge, end: raw.end - edge };
}

const APART_MAKES: ReadonlySet<string> = new Set([
  'out',
  'loose',
  'taken off',
  'hung',
  'disconnected',
  'drained',
  'removed',
]);
const TAKES_APART: ReadonlySet<string> = new Set(
  [...VERB_BY_WORD.values()]
    .filter((verb) =>
      Object.values(verb.on).some((effect) => effect.makes.some((make) => APART_MAKES.has(make))),
    )
    .map((verb) => verb.word),
);
