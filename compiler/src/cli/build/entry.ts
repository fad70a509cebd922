// What the list of guides, and the lines of a build, say of a procedure.
import { type Analysis, STATUSES, type Status } from '@baywright/language';
import type { LibraryGuide } from '../../html/library.js';

export interface GuideEntry extends Omit<LibraryGuide, 'files' | 'statusText'> {
  readonly status: Status;
  /** The day of the status, where it has one. */
  readonly day?: string;
}

export function entryOf({ model, job }: Analysis): GuideEntry {
  const latest = model.revisions[0];
  const number = latest?.number?.value;
  const titles = (kind: string): string[] =>
    model.things.filter((thing) => thing.kind === kind).map(({ title }) => title);
  const vehicles = model.applies.map(({ vehicle }) =>
    vehicle ? (job.scope.resolve(vehicle.text)?.title ?? vehicle.text) : '',
  );
  return {
    number: model.number ?? '?',
    title: model.title,
    revision: number === undefined ? '' : String(number.n / number.d),
    date: latest?.day?.text ?? '',
    status: STATUSES.find((status) => status === model.status?.status?.text) ?? 'draft',
    ...(model.status?.day === undefined ? {} : { day: model.status.day.text }),
    vehicles: [...new Set(vehicles)].filter((name) => name !== ''),
    parts: titles('part'),
    tools: titles('tool'),
  };
}
