// Fixes of broken rules: the line that the rule asks for, put where it asks for it.
import type { Fix } from '../diagnostics/define.js';
import { minutes } from '../names/figures.js';
import { inSentence } from '../names/in-sentence.js';
import type { Thing } from '../names/model.js';
import type { Act } from '../state/act.js';
import { moveFix } from '../state/fixes.js';
import type { Machine } from '../state/machine.js';
import { MAKES_WANT, UNDOES } from '../state/wants.js';
import type { EventPattern, Line } from '../syntax/tree.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import { ANY_KIND, isTarget } from './match.js';
import type { Required } from './rule-model.js';
import { timeWords } from './words.js';

type Target = NonNullable<EventPattern['target']>;

/**
 * The line that meets the demand, by the first verb of it that acts on the thing. Undefined where more than one thing
 * would do and none is nearer than the others, or where words of a person are asked for.
 */
export function lineFor(
  m: Machine,
  required: Required,
  it: Thing | undefined,
  act: Act,
  left?: number,
): string | undefined {
  if (required.form === 'wait') return `wait ${timeWords(left ?? minutes(required.time) ?? 0)}`;
  if (required.form === 'message')
    return required.message === 'hold'
      ? `hold: A second technician checks ${act.statement?.objects.map((o) => (o.thing ? inSentence(o.thing) : o.item.name.text)).join(', ') ?? 'this'}.`
      : undefined;
  const { pattern } = required;
  const { target } = pattern;
  if (!target || pattern.clauses.length > 0) return undefined;
  const fitting =
    target.form === 'it'
      ? [it]
      : target.form === 'vehicle'
        ? [m.job.scope.resolve('vehicle')]
        : [...m.job.scope.names.values()].filter((t) => isTarget(target, t, undefined));
  const verbFor = (thing: Thing): string | undefined =>
    pattern.verbs.find(({ text }) => VERB_BY_WORD.get(text)?.on[thing.kind])?.text;
  const things = fitting
    .filter((t) => t !== undefined)
    .filter((t) => verbFor(t) !== undefined && !(verbFor(t) === 'chock' && isLiftedAt(m, t)));
  const only =
    soleOf(things) ??
    soleOf(things.filter((t) => isNear(m, act, t, target))) ??
    soleOf(things.filter((t) => isUndoneLater(m, act, t, verbFor(t))));
  return only && [verbFor(only), only.name, pattern.value?.text].filter((w) => w !== undefined).join(' ');
}

/** Where the vehicle is lifted or stands on its supports, no chock goes. */
function isLiftedAt({ acts }: Machine, place: Thing): boolean {
  return acts.some(({ statement }) => statement?.named('at').some(({ thing }) => thing === place));
}

const soleOf = (things: readonly Thing[]): Thing | undefined => (things.length === 1 ? things[0] : undefined);

/**
 * Where fasteners are asked for, what holds the thing that the act is on; where anything is, the line that is opened or
 * the part with the spring in it.
 */
function isNear(m: Machine, { statement }: Act, thing: Thing, target: Target): boolean {
  const isAny = target.form === 'any' && target.kind.text === ANY_KIND;
  return (statement?.objects ?? []).some(
    ({ thing: on }) =>
      on &&
      (isAny
        ? on === thing && (on.kind === 'connection' || on.marks.includes('loaded-spring'))
        : m.job.relations(on, 'held by').some((holder) => holder.target === thing)),
  );
}

/** Whether a later line takes away what the verb would bring about: the chocks that are taken away at the end. */
function isUndoneLater(m: Machine, act: Act, thing: Thing, verb: string | undefined): boolean {
  const makes = VERB_BY_WORD.get(verb ?? '')?.on[thing.kind]?.makes ?? [];
  const undone = makes.flatMap((make) => UNDOES[make] ?? []);
  return m.acts
    .slice(act.index + 1)
    .some(
      ({ statement }) =>
        statement?.objects.some((o) => o.thing === thing) &&
        statement.verb.on[thing.kind]?.makes.some((make) =>
          MAKES_WANT[make]?.some((want) => undone.includes(want)),
        ),
    );
}

/** Before the act; before its whole block of the step where other vehicles do the same in a block of their own. */
export function insertBefore(
  m: Machine,
  act: Act,
  line: string,
  isSame: (other: Act) => boolean,
): Fix | undefined {
  const isShared = m.acts.some(
    (a) => a !== act && a.step === act.step && isSame(a) && !m.d.implies(a.when, act.when),
  );
  const block = act.through
    ? undefined
    : act.step?.children.find((c) => c.start <= act.line.start && act.line.end <= c.end);
  const at = isShared && block ? block : act.line;
  return insert(m, { ...act, line: at }, line, (text, { start }) => text.lastIndexOf('\n', start - 1) + 1);
}

/** Moves the line that does later what the rule asks for to before the act, where one line does just that. */
export function moveUp(m: Machine, act: Act, does: (later: Act) => boolean): Fix | undefined {
  const later = m.acts.find(
    (a) => a.index > act.index && a.step === act.step && does(a) && (a.statement?.objects.length ?? 1) === 1,
  );
  return later && m.d.implies(act.when, later.when) ? moveFix(m, later, act) : undefined;
}

/** Behind the act's line and what stands below it. */
export function insertBehind(m: Machine, act: Act, line: string): Fix | undefined {
  return insert(m, act, line, (text, at) => {
    const end = text.indexOf('\n', at.end);
    return end < 0 ? text.length : end + 1;
  });
}

/** Adds a clause to the act's own line. */
export function addClause(m: Machine, act: Act, clause: string): Fix | undefined {
  const { line, file } = act;
  if (act.through || file !== m.job.file.path || line.kind !== 'statement' || line.guard) return undefined;
  const { end } = line.code;
  return { title: `Add \`${clause}\``, edits: [{ file, span: { start: end, end }, text: ` ${clause}` }] };
}

function insert(
  m: Machine,
  act: Act,
  line: string,
  place: (text: string, at: Line) => number,
): Fix | undefined {
  const { path, tree } = m.job.file;
  if (!act.through && act.file !== path) return undefined;
  // Beside a line that performs an operation stand steps.
  const beside = act.through ?? act.line;
  const lines = act.through ? ['step: Put right', `  ${line}`] : [line];
  const at = place(tree.text, beside);
  const opening = at === tree.text.length && !tree.text.endsWith('\n') ? '\n' : '';
  const text = lines.map((each) => `${' '.repeat(beside.indent)}${each}\n`).join('');
  return {
    title: `Insert \`${line}\``,
    edits: [{ file: path, span: { start: at, end: at }, text: opening + text }],
  };
}
