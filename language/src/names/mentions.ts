// Every place of a file that names a thing, and in which way: declares it, acts on it, names it in a clause, refers to
// it in text. Navigation, rename and "where used" read it.
import type { Clause, EventPattern, Item, Line, Name, Tree } from '../syntax/tree.js';
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

/** The mentions of one line, in the order written. */
export function mentionsOf(line: Line): Mention[] {
  const found: Mention[] = [];
  visitMentions(line, (name, way, more) => {
    found.push(more ? { name, way, line, ...more } : { name, way, line });
  });
  return found.length < 2 ? found : found.sort((a, b) => a.name.start - b.name.start);
}

type Visit = (name: Name, way: MentionWay, more?: Omit<Mention, 'name' | 'way' | 'line'>) => void;

/** Tells every mention of one line, in any order; nothing is made on the way, for it is asked at every edit. */
export function visitMentions(line: Line, visit: Visit): void {
  switch (line.kind) {
    case 'entry':
      told(line.name, 'declares', visit);
      break;
    case 'operation':
      told(line.name, 'declares', visit, OWN_OPERATION);
      break;
    case 'clauses':
      inClauses(line.clauses, visit);
      break;
    case 'prerequisite':
      told(line.name, 'names', visit);
      inClauses(line.clauses, visit);
      break;
    case 'statement': {
      const verb = { verb: line.verb.text };
      for (const item of line.items) inItem(item, 'acts on', visit, verb);
      inClauses(line.clauses, visit);
      break;
    }
    case 'applies':
      told(line.vehicle, 'names', visit);
      break;
    case 'perform':
      told(line.operation, 'names', visit, {
        operation: { from: line.from && !line.from.hole ? line.from.text : undefined },
      });
      break;
    case 'if':
      told(line.subject, 'names', visit);
      break;
    case 'message':
      told(line.reference, 'names', visit);
      break;
    case 'rule':
      for (const clause of line.clauses) {
        if ('pattern' in clause) inEvent(clause.pattern, visit);
        if (clause.word === 'while') inTarget(clause.state?.target, visit);
        if (clause.word === 'needs' && clause.clause) inClauses([clause.clause], visit);
      }
      break;
    default:
      break;
  }
  // Options are no things, but `when vehicle maristow-300` names one.
  if ('guard' in line && line.guard)
    for (const { option, values } of line.guard.terms)
      if (option.text === 'vehicle') for (const name of values) told(name, 'names', visit);
  if (!line.prose) return;
  for (const { name, attribute } of line.prose.references)
    told(name, 'text', visit, attribute && { attribute: attribute.text });
}

const OWN_OPERATION = { operation: { from: undefined } };

function told(name: Name | undefined, way: MentionWay, visit: Visit, more?: Parameters<Visit>[2]): void {
  if (name && name.text !== '' && name.text !== '?') visit(name, way, more);
}

function inItem(item: Item, way: MentionWay, visit: Visit, more?: Parameters<Visit>[2]): void {
  told(item.name, way, visit, more);
  for (const other of item.alternatives) told(other, way, visit, more);
}

function inClauses(clauses: readonly Clause[], visit: Visit): void {
  for (const { word, items, event, raw } of clauses) {
    for (const item of items) inItem(item, 'names', visit);
    if (event) inEvent(event, visit);
    if (raw && !raw.hole && RAW_NAMES.has(word)) told(rawName(raw), 'names', visit);
  }
}

function inEvent(pattern: EventPattern | undefined, visit: Visit): void {
  if (!pattern) return;
  inTarget(pattern.target, visit);
  inClauses(pattern.clauses, visit);
}

function inTarget(target: EventPattern['target'], visit: Visit): void {
  if (target?.form === 'names') for (const name of target.names) told(name, 'names', visit);
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
