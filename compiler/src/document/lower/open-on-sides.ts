// What is off and what waits for its torque at a row of work on both sides: what the rows did, one after the other. The
// state at a line is that of a side, and says nothing of the other.
import { type PhraseId, phrase } from '@baywright/language';
import type { TorqueStage } from '../beside.js';
import type { BlockOf } from '../blocks.js';
import { type Prose, text } from '../inline.js';
import { capitalFirst } from './names.js';
import type { Walk } from './walk.js';

type OffNow = BlockOf<'off-now'>;

export interface GuideRow {
  readonly row: BlockOf<'row'>;
  /** Of its step. */
  readonly title: string;
}

/** `next` is the first row that is not done. */
export function openOnSides(
  walk: Walk,
  rows: readonly GuideRow[],
  next: number,
): Pick<OffNow, 'rail' | 'groups' | 'torques'> {
  const { language, uses } = walk.print;
  const open = new Map<string, { readonly to: 'off' | 'loose'; readonly since: string }>();
  for (const { row } of rows.slice(0, next))
    for (const { thing, to } of row.changes) {
      // What changes goes to the end: the list is in the order of the work.
      open.delete(thing);
      if (to !== 'done') open.set(thing, { to, since: row.number });
    }
  const found = [...open].map(([thing, { to, since }]) => {
    const back = rows
      .slice(next)
      .find(({ row }) =>
        row.changes.some((change) => change.thing === thing && (to === 'off' || change.to === 'done')),
      )?.row.number;
    return { what: [text(capitalFirst(walk.things.get(thing) ?? thing))], to, since, back };
  });
  const off = found.filter(({ to }) => to === 'off');
  const loose = found.filter(({ to }) => to === 'loose');
  const group = (own: typeof found, title: PhraseId): OffNow['groups'] => {
    const said = own.map(({ what, since, back }) => ({
      what,
      since,
      ...(back === undefined ? {} : { next: [text(back)] }),
    }));
    return own.length === 0 ? [] : [{ title: phrase(title, language), rows: said }];
  };
  return {
    rail: { off: off.length, loose: loose.length },
    groups: [...group(off, 'group-off'), ...group(loose, 'group-untorqued')],
    torques: loose.flatMap(({ back }) => {
      const used = uses.torques.find(({ number }) => number === back);
      return used ? [{ joint: used.joint, torque: turnsProse(used.stages), number: used.number }] : [];
    }),
  };
}

/** Turns of the wrench one after the other: `first 20 N·m, then 54 N·m`, in both systems. */
export const turnsProse = (stages: readonly TorqueStage[]): Prose =>
  stages.flatMap(
    ({ label, figure, unit }, i): Prose => [
      text(`${i === 0 ? '' : ', '}${label === undefined ? '' : `${label} `}`),
      figure ? { kind: 'quantity', quantity: figure } : text(`? ${unit ?? ''}`),
    ],
  );
