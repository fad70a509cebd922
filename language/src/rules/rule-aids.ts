// What a broken rule leaves behind: chocks, locks and caps that it asked for are taken to be there from then on, so that
// the line that takes them away, and a second rule that asks for the same, tell nothing more.
import { allThings, linesOfWork } from '../names/job.js';
import type { Thing } from '../names/model.js';
import type { Act } from '../state/act.js';
import { assumeLack } from '../state/assume.js';
import type { Deficit, Lack } from '../state/deficit.js';
import type { Machine } from '../state/machine.js';
import { NEED_RULES } from '../state/need-rules.js';
import type { EventPattern } from '../syntax/tree.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import type { ThingKind } from '../vocabulary/kinds.js';
import type { Make } from '../vocabulary/needs.js';
import { isTarget } from './match.js';
import type { Required } from './rule-model.js';

/** What is put there and taken away again. */
type Aid = 'placed' | 'chocked' | 'capped';

const TAKES_AWAY: Readonly<Record<Aid, Make>> = {
  placed: 'removed',
  chocked: 'unchocked',
  capped: 'uncapped',
};

/** Where a finding before has said already that what the rule asks to be there is not. */
export function alreadyTold(m: Machine, required: Required): Condition {
  if (required.form !== 'act' || !required.pattern.target) return NEVER;
  return boundTo(m, required.pattern.target)
    .filter(({ kind }) => aidWanted(required.pattern, kind) !== undefined)
    .reduce<Condition>((all, thing) => m.d.or(all, m.assumedWhere(thing)), NEVER);
}

/**
 * What a rule asked to be there, and a line takes away, is there from here on. Other things that it may have meant are
 * marked alone: nobody knows which of several places the chocks belong at. `it` is the thing of a rule about its own.
 */
export function assumeAids(
  m: Machine,
  required: Required,
  it: Thing | undefined,
  act: Act,
  when: Condition,
): void {
  if (required.form !== 'act' || !required.pattern.target) return;
  const { pattern } = required;
  const things = it ? [it] : boundTo(m, required.pattern.target);
  const found = things.flatMap((thing) => {
    const need = aidWanted(pattern, thing.kind);
    const asked = { act, thing, count: undefined, value: undefined, when };
    return need ? NEED_RULES[need](m, asked).map((lack) => ({ lack, need })) : [];
  });
  const deficit = silentOf(
    act,
    found.map(({ lack }) => lack),
  );
  for (const { lack, need } of found)
    if (isTakenAway(m, lack.thing, need)) assumeLack(m, lack, deficit);
    else m.assume(lack.thing, lack.want, lack.when, deficit);
}

/** A lack that is told elsewhere. */
export function silentOf(act: Act, lacks: readonly Lack[]): Deficit {
  return {
    act,
    need: 'end',
    about: [],
    lacks: [...lacks],
    silent: true,
    also: new Map(),
    late: [],
    arrived: new Map(),
  };
}

/** The things that a target means. */
export function boundTo(m: Machine, target: NonNullable<EventPattern['target']>): Thing[] {
  return allThings(m.job.scopes).filter((t) => isTarget(target, t, undefined));
}

const aidWanted = ({ verbs }: EventPattern, kind: ThingKind): Aid | undefined =>
  verbs
    .flatMap(({ text }) => VERB_BY_WORD.get(text)?.on[kind]?.makes ?? [])
    .find((make) => make === 'placed' || make === 'chocked' || make === 'capped');

const isTakenAway = ({ job }: Machine, { name, kind }: Thing, aid: Aid): boolean =>
  linesOfWork(job.file).some(
    (line) =>
      line.kind === 'statement' &&
      line.items.some((item) => item.name.text === name) &&
      VERB_BY_WORD.get(line.verb.text)?.on[kind]?.makes.includes(TAKES_AWAY[aid]),
  );
