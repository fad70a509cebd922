// What is written down about an issue: who, when, which files with which hashes, and what came before it.
import * as z from 'zod';

const hash = z
  .string()
  .regex(/^[0-9a-f]{64}$/)
  .describe('SHA-256, lower-case hexadecimal.');

export const issueRecordSchema = z.strictObject({
  format: z.literal(1).describe('The form of this file.'),
  number: z.string().min(1),
  title: z.string(),
  revision: z.int().min(0),
  status: z.enum(['released', 'withdrawn']),
  by: z.array(z.string()).describe('Initials on the status line.'),
  day: z.string().describe('The day on the status line.'),
  note: z.string().describe('What the status line says after its colon.'),
  issued: z.string().describe('When the issue was made, UTC.'),
  program: z.string().describe('The version of the program that made it.'),
  source: z.string().min(1).describe('Library path of the procedure.'),
  change: z.string().describe('What changed since the issue before, in a sentence.'),
  copies: z.array(z.string()).describe('Where printed copies hang.'),
  files: z.record(z.string(), hash).describe('Every file of the issue but this one.'),
  shown: z
    .record(z.string(), hash)
    .optional()
    .describe('The pictures and films that the guide shows, by library path; older issues do not say.'),
  before: z
    .strictObject({ revision: z.int().min(0), record: hash })
    .nullable()
    .describe('The issue before, with the hash of its record.'),
});
export type IssueRecord = z.infer<typeof issueRecordSchema>;

export const registerSchema = z.strictObject({
  format: z.literal(1),
  issues: z.array(z.strictObject({ number: z.string(), revision: z.int().min(0), record: hash })),
});
export type Register = z.infer<typeof registerSchema>;

/** The published JSON Schema of `issue.json`. */
export function issueRecordJsonSchema(): unknown {
  return {
    title: 'The record of an issued guide',
    ...z.toJSONSchema(issueRecordSchema, { target: 'draft-2020-12' }),
  };
}
