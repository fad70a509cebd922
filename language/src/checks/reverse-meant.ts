// `remove chocks` where `unchock rear-wheels` is meant: what a verb puts on needs no name, and the verb that undoes it
// takes it off again.
import type { Job } from '../names/job.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import type { NameUse } from './name-uses.js';
import { statementsOf, workLines } from './own-lines.js';

/**
 * The line that is meant by taking off what nothing declares; undefined where nothing of the kind was put on, empty where
 * the line that does it cannot be read yet.
 */
export function reverseMeant(job: Job, name: string, uses: readonly NameUse[]): string | undefined {
  const isTakenOff = uses.every(
    ({ at }) =>
      at.form === 'object' && at.statement.verb.word === 'remove' && at.statement.objects.length === 1,
  );
  const verb = isTakenOff ? (VERB_BY_WORD.get(name) ?? VERB_BY_WORD.get(name.replace(/s$/, ''))) : undefined;
  const reverse = verb && VERB_BY_WORD.get(`un${verb.word}`);
  if (!reverse) return undefined;
  const on = statementsOf(job, (each) => each === verb).flatMap(({ statement }) =>
    statement.objects.map(({ thing, item }) => thing?.name ?? item.name.text),
  );
  if (on.length > 0) return `${reverse.word} ${[...new Set(on)].join(', ')}`;
  return workLines(job).some(({ line }) => line.broken && line.tokens[0]?.image === verb.word)
    ? ''
    : undefined;
}
