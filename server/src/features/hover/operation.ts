// What an operation asks for and what it leaves, where it is performed and where it is declared.
import { operationSummary, type Thing, type ThingState } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';

/** Things named of each; the rest are counted. */
const MOST = 8;

/** Empty for what is no operation, and for one that changes nothing. */
export function operationLines(snapshot: Snapshot, thing: Thing): string {
  if (thing.kind !== 'operation') return '';
  const { file, imports } = snapshot.job();
  const owner = thing.file === file.path ? file : imports.model(thing.file);
  if (!owner) return '';
  const { say } = snapshot;
  const listed = (states: readonly ThingState[]): string => {
    const named = states
      .slice(0, MOST)
      .map(({ thing: of, state, variants }) =>
        [of.name, state, ...(variants === undefined ? [] : [say.when(variants)])].join(' '),
      )
      .join(', ');
    return states.length > MOST ? say.andMore(named, states.length - MOST) : named;
  };
  const { needs, makes } = operationSummary(owner, thing, imports);
  return [
    needs.length > 0 ? say.operationNeeds(listed(needs)) : '',
    makes.length > 0 ? say.operationLeaves(listed(makes)) : '',
  ]
    .filter((line) => line !== '')
    .join('  \n');
}
