// `baywright/state`: the vehicle just before the work of a line, in sections, the gravest first.
import {
  detailText,
  pathAt,
  phrase,
  STATE_GROUPS,
  type StateFact,
  type StateGroup,
  stateAt,
} from '@baywright/language';
import {
  METHODS,
  type StateEntry,
  type StateKind,
  type StateQuestion,
  type VehicleState,
} from '../../protocol.js';
import type { Snapshot } from '../../snapshot.js';
import { documentFeature } from '../feature.js';

export const state = documentFeature<StateQuestion>(
  METHODS.state,
  {},
  async (snapshot, { position, side, variant }, view): Promise<VehicleState> => {
    const { run, job } = await view.analysed(snapshot);
    if (!run) return { variant: '', sections: [] };
    const offset = snapshot.positions.lineStart(position.line);
    const line = pathAt(snapshot.tree, snapshot.positions.offset(position)).pop();
    const chosen = { ...variant, ...(side === undefined || side === 'both' ? {} : { side }) };
    const facts = stateAt(run, line && line.start >= offset ? line.start : offset, chosen);
    const groups = new Map<StateGroup, StateEntry[]>();
    for (const fact of facts)
      groups.set(fact.group, [...(groups.get(fact.group) ?? []), entryOf(snapshot, fact)]);
    const sections = (Object.keys(STATE_GROUPS) as StateGroup[]).flatMap((group) => {
      const entries = groups.get(group);
      return entries ? [{ title: phrase(`group-${group}`, snapshot.client.language), entries }] : [];
    });
    const words = Object.entries(chosen)
      .filter(([name, value]) => job.universe.axis(name)?.values.includes(value))
      .map(([name, value]) => (name === 'side' ? value : `${name} ${value}`));
    return { variant: words.join(', '), sections };
  },
);

function entryOf(snapshot: Snapshot, { thing, said, act, group, variants }: StateFact): StateEntry {
  const { say, client } = snapshot;
  const detail = detailText(said, client.language);
  const step = act?.step?.prose?.text.trim();
  const since = act && step !== undefined && act.file === snapshot.path ? say.since(step) : '';
  const when = variants === undefined ? '' : say.when(variants);
  const kind: StateKind = group;
  return {
    label: thing.title,
    detail: [detail, when, since].filter((x) => x !== '').join(' · '),
    kind,
    ...(act ? { location: snapshot.location(act.blame.file, act.blame.span) } : {}),
  };
}
