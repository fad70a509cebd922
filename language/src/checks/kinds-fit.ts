// N201, N202, N211, N212: whether what is named is of a kind that its place takes, and not more than there are.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { builtInMisused, countTooGreat, wrongKind, wrongKindInClause } from '../diagnostics/names.js';
import { countKnown } from '../names/figures.js';
import type { Job } from '../names/job.js';
import type { Thing } from '../names/model.js';
import { numberOf } from '../quantity/index.js';
import { VERBS } from '../verbs/index.js';
import type { VerbDef } from '../vocabulary/verb.js';
import type { Check } from './check.js';
import { manyOf, oneOf } from './kind-words.js';
import { kindsOn, type NameUse, nameUses } from './name-uses.js';

export const kindsFit: Check = ({ job }) => {
  const found: Finding[] = [];
  for (const use of nameUses(job)) {
    const thing = namedBy(use);
    const fault = thing && (kindFault(use, thing, job) ?? countFault(use, thing, job));
    if (fault) found.push(fault);
  }
  return found;
};

/** What is meant: of an object, what the statement acts on, unless it is one of the machines that the verb cannot move. */
function namedBy({ item, thing, at }: NameUse): Thing | undefined {
  if (at.form !== 'object' || thing?.kind === 'machine') return thing;
  return at.statement.objects.find((object) => object.item === item)?.thing ?? thing;
}

function kindFault(use: NameUse, thing: Thing, { file }: Job): Finding | undefined {
  if (use.at.form === 'object') {
    const { verb } = use.at.statement;
    if (verb.object === 'none') return undefined;
    if (thing.kind === 'machine' && verb.machines && verb.on.machine)
      return builtInFault(verb, thing, file.path, spanOf(use));
    if (verb.on[thing.kind]) return undefined;
    const span = spanOf(use);
    return finding(
      wrongKind,
      {
        file: file.path,
        span,
        related: declaredAt(thing),
        fixes: [...setFixes(use, thing, file.path), ...vehicleFix(use, thing, file.path)],
      },
      {
        name: thing.name,
        kind: oneOf(thing.kind),
        verb: verb.word,
        takes: manyOf(kindsOn(verb)),
        verbs: verbsFor(thing),
        instead: insteadOf(verb, thing),
      },
    );
  }
  // A clause that takes no names at all is a fault of the clause, not of its names.
  if (use.kinds.length === 0 || use.kinds.includes(thing.kind)) return undefined;
  const clause =
    use.at.form === 'clause' || use.at.form === 'relation'
      ? use.at.clause.word
      : use.at.form === 'message'
        ? 'a signal word'
        : 'prerequisites';
  return finding(
    wrongKindInClause,
    { file: file.path, span: spanOf(use), related: declaredAt(thing) },
    { name: thing.name, kind: oneOf(thing.kind), clause, takes: manyOf(use.kinds) },
  );
}

const spanOf = ({ name: { start, end } }: NameUse): { start: number; end: number } => ({ start, end });

/** `lower forks` means `set forks lowered`: a line for each value of the condition. */
function setFixes({ at, line, name }: NameUse, thing: Thing, file: string): Fix[] {
  if (at.form !== 'object' || thing.kind !== 'condition' || at.statement.objects.length > 1) return [];
  const span = { start: line.code.start, end: name.end };
  // `apply brake` wants it applied.
  const { done } = at.statement.verb;
  const values = thing.values.map(({ text }) => text);
  return [...values.filter((v) => v === done), ...values.filter((v) => v !== done)].map((value) => {
    const text = `set ${thing.name} ${value}`;
    const fix: Fix = { title: `Write \`${text}\``, edits: [{ file, span, text }] };
    return value === done ? { ...fix, preferred: true } : fix;
  });
}

/** The vehicle on the lift is `vehicle`, whatever the fleet calls it. */
function vehicleFix({ at, name }: NameUse, thing: Thing, file: string): Fix[] {
  if (at.form !== 'object' || thing.kind !== 'vehicle' || !at.statement.verb.machines?.includes('vehicle'))
    return [];
  const edits = [{ file, span: { start: name.start, end: name.end }, text: 'vehicle' }];
  return [{ title: 'Write `vehicle`', edits, preferred: true }];
}

/** Where what is meant is declared, when the thing stands for something that belongs to it. */
function insteadOf({ on, word }: VerbDef, { name, kind }: Thing): string | undefined {
  if (on.adjustment && kind === 'limit')
    return `what is set is declared under \`adjustments\`, with \`limit ${name}\` below it`;
  if (on.connection && kind === 'part' && (word === 'connect' || word === 'disconnect'))
    return `what is joined is declared under \`connections\`, with \`on ${name}\` below it`;
  return undefined;
}

function builtInFault(
  verb: VerbDef,
  thing: Thing,
  file: string,
  span: { start: number; end: number },
): Finding | undefined {
  const { machines = [] } = verb;
  if (machines.includes(thing.name)) return undefined;
  const fixes = machines.map((name) => ({
    title: `Write \`${verb.word} ${name}\``,
    edits: [{ file, span, text: name }],
    ...(machines.length === 1 ? { preferred: true as const } : {}),
  }));
  return finding(
    builtInMisused,
    { file, span, fixes },
    { verb: verb.word, name: thing.name, takes: machines.map((name) => `\`${name}\``).join(' or ') },
  );
}

function countFault({ item, name, at }: NameUse, thing: Thing, { file, count }: Job): Finding | undefined {
  if (
    at.form !== 'relation' ||
    item?.count?.value === undefined ||
    item.name !== name ||
    thing.kind !== 'fastener' ||
    !countKnown(thing)
  )
    return undefined;
  const written = numberOf(item.count.value);
  if (written <= count(thing)) return undefined;
  const span = { start: item.count.start, end: item.count.end };
  return finding(
    countTooGreat,
    { file: file.path, span, related: declaredAt(thing) },
    { written, name: thing.name, count: count(thing) },
  );
}

function declaredAt(thing: Thing): { file: string; span: { start: number; end: number }; message: string }[] {
  const name = thing.line?.kind === 'entry' ? thing.line.name : undefined;
  return name
    ? [{ file: thing.file, span: { start: name.start, end: name.end }, message: 'declared here' }]
    : [];
}

/** Verbs that act on a kind: those that change its state first, of them those that act on fewest kinds, made for it. */
function verbsFor(thing: Thing): string[] {
  return VERBS.filter((verb) => verb.on[thing.kind])
    .map((verb) => ({
      word: verb.word,
      changes: verb.on[thing.kind]?.makes.some((made) => made !== 'outcome') ? 0 : 1,
      kinds: kindsOn(verb).length,
    }))
    .sort((a, b) => a.changes - b.changes || a.kinds - b.kinds)
    .slice(0, 6)
    .map(({ word }) => `\`${word}\``);
}
