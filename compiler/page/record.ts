// The record of a job as data, for the shop's files. Its schema is published with the program.
import type { PageData } from '../src/html/page-types.js';
import type { JobRecord } from '../src/record-schema.js';
import type { Entries, JobState, Times } from './state.js';

export function jobRecord(
  data: PageData,
  entries: Entries,
  times: Times,
  state: JobState,
  signedAt: number | undefined,
): JobRecord {
  const iso = (time: number | undefined) => (time === undefined ? null : new Date(time).toISOString());
  const text = (name: string) => String(entries[name] ?? '').trim();
  return {
    format: 'baywright-record',
    version: 1,
    guide: { ...data.guide, options: [...data.guide.options] },
    signedAt: iso(signedAt),
    open: state.open.length,
    fields: Object.fromEntries(
      Object.entries(entries)
        .filter(([name, value]) => name.startsWith('field-') && value !== '')
        .map(([name, value]) => [name.slice('field-'.length), String(value)]),
    ),
    lines: data.rows.map((row) => ({
      number: row.number,
      done: state.rows[row.id]?.ticked ?? false,
      needed: state.rows[row.id]?.needed ?? true,
      at: iso(times[row.id]),
    })),
    readings: data.rows.flatMap((row) =>
      row.readings.map((reading) => ({
        line: row.number,
        name: reading.name,
        place: reading.place ?? null,
        typed: text(reading.id),
        unit: text(`unit-${reading.box}`) || (reading.units[0]?.label ?? ''),
        low: reading.low ?? null,
        high: reading.high ?? null,
        limitUnit: reading.units[0]?.label ?? '',
        result: state.rows[row.id]?.verdicts[reading.id]?.verdict ?? 'none',
      })),
    ),
    inspections: data.rows.flatMap((row) =>
      row.inspections.map((id) => ({
        line: row.number,
        result: entries[`${id}-good`]
          ? ('good' as const)
          : entries[`${id}-bad`]
            ? ('bad' as const)
            : ('none' as const),
      })),
    ),
    torques: data.torques.map(({ id, number, joint }) => ({
      line: number,
      joint,
      wrench: text(`wrench-${id}`),
      initials: text(`torqued-${id}`),
    })),
    holds: data.rows.flatMap((row) =>
      row.holds.map((id) => ({ line: row.number, initials: text(id), time: text(`time-${id}`) })),
    ),
    clocks: state.clocks.map(({ clock, started }) => ({
      name: clock.name,
      seconds: clock.seconds,
      startedAt: iso(started),
    })),
    stillOff: state.off.map((thing) => data.things[thing] ?? thing),
    toTorque: state.loose.map((thing) => data.things[thing] ?? thing),
  };
}
