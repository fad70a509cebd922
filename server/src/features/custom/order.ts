// `baywright/order`: the tightening order of the fastener at a place, drawn.
import { clausesOf, mentionsOf, type Thing, tighteningCount, trade } from '@baywright/language';
import { lineAround, meantAt, thingOf } from '../../locate.js';
import { METHODS, type OrderAnswer, type OrderQuestion } from '../../protocol.js';
import type { Snapshot } from '../../snapshot.js';
import { documentFeature } from '../feature.js';

export const order = documentFeature<OrderQuestion>(
  METHODS.order,
  {},
  (snapshot, { position }): OrderAnswer => {
    const offset = snapshot.positions.offset(position);
    for (const { thing, asked } of candidates(snapshot, offset)) {
      const text = asked ?? clausesOf(thing, 'order')[0]?.clause.raw?.text;
      const read = text === undefined ? undefined : trade.readOrder(text);
      if (!read || 'problem' in read) continue;
      const layout = clausesOf(thing, 'layout')[0]?.clause.raw?.text;
      const rows = Number(/^(\d+)\s*rows?$/.exec(layout ?? '')?.[1]);
      const made = trade.tighteningOrder({
        ...read,
        count: tighteningCount(thing),
        ...(read.layout || !rows ? {} : { layout: { rows } }),
      });
      if (trade.isOrder(made)) return { svg: trade.orderSvg(made) };
    }
    return {};
  },
);

/** The thing under the cursor, else those that its line acts on, else the entry it stands in. */
function candidates(snapshot: Snapshot, offset: number): { thing: Thing; asked: string | undefined }[] {
  const line = lineAround(snapshot, offset);
  const asked =
    line?.kind === 'statement' ? line.clauses.find((c) => c.word === 'order')?.raw?.text : undefined;
  const under = meantAt(snapshot, offset)?.thing;
  const acted = line
    ? mentionsOf(line)
        .filter((m) => m.way === 'acts on' || m.way === 'declares')
        .map((m) => thingOf(snapshot.shelf, snapshot.path, m))
    : [];
  const entry = snapshot.library
    .model(snapshot.path)
    ?.things.find((t) => t.line && t.line.start <= offset && t.line.end >= offset);
  return [under, ...acted, entry]
    .filter((t) => t?.kind === 'fastener')
    .map((thing) => ({ thing: thing as Thing, asked }));
}
