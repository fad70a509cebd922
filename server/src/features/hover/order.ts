// What must come off before a thing can.
import { NEVER, removalOrder, type Thing } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';

/** Names in a list stay few enough to read. */
const MOST = 8;

/** `Comes off after wheel-nut, wheel`, the first to come off first; empty where nothing is in the way. */
export function orderLine(snapshot: Snapshot, thing: Thing): string {
  const job = snapshot.job();
  const { universe } = job;
  const before = removalOrder(job, thing).reverse();
  if (before.length === 0) return '';
  const names = before.slice(-MOST).map(({ thing: first, when }) => {
    const variants = when === NEVER ? undefined : universe.words(when);
    return variants === undefined ? first.name : `${first.name} (${snapshot.say.when(variants)})`;
  });
  return snapshot.say.comesOffAfter(names.join(', '), before.length - names.length);
}
