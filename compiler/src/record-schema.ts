// The record that a page saves: one JSON object a job. The published schema is made from this one.
import { z } from 'zod';

const moment = z.iso.datetime().nullable();
const text = z.string();

export const JOB_RECORD = z.strictObject({
  format: z.literal('baywright-record'),
  version: z.literal(1),
  guide: z.strictObject({
    number: text,
    title: text,
    revision: text,
    date: text,
    status: text,
    side: text,
    options: z.array(text),
    print: text,
  }),
  /** Null until the record is signed. */
  signedAt: moment,
  /** How many things still kept it from being signed when it was saved. */
  open: z.int().nonnegative(),
  fields: z.record(text, text),
  lines: z.array(z.strictObject({ number: text, done: z.boolean(), needed: z.boolean(), at: moment })),
  readings: z.array(
    z.strictObject({
      line: text,
      name: text,
      /** Which of several places of the line it was taken at, from 1; null where it is taken once. */
      place: z.int().positive().nullable(),
      typed: text,
      unit: text,
      low: text.nullable(),
      high: text.nullable(),
      limitUnit: text,
      result: z.enum(['none', 'not a number', 'pass', 'low', 'high']),
    }),
  ),
  inspections: z.array(z.strictObject({ line: text, result: z.enum(['none', 'good', 'bad']) })),
  torques: z.array(z.strictObject({ line: text, joint: text, wrench: text, initials: text })),
  holds: z.array(z.strictObject({ line: text, initials: text, time: text })),
  clocks: z.array(z.strictObject({ name: text, seconds: z.number(), startedAt: moment })),
  stillOff: z.array(text),
  toTorque: z.array(text),
});

export type JobRecord = z.infer<typeof JOB_RECORD>;
