// The shape of `check --format json`, published as a JSON Schema. Apart from the rest, so that a run of the command
// does not wait for the schema library.
import * as z from 'zod';

const position = z.strictObject({
  line: z.int().min(1).describe('Line, from 1.'),
  column: z.int().min(1).describe('Column in UTF-16 units, from 1.'),
});
const range = z.strictObject({
  start: position,
  end: position.describe('The place just behind the last character.'),
});
const related = z.strictObject({ message: z.string(), file: z.string(), range });
const edit = z.strictObject({
  file: z.string(),
  range,
  text: z.string().describe('What stands in the range afterwards.'),
});
const fix = z.strictObject({ title: z.string(), edits: z.array(edit) });

const reportFindingSchema = z.strictObject({
  code: z.string().describe('Stable code: a letter and three digits.'),
  name: z.string().describe('The finding’s name in words, accepted wherever the code is.'),
  severity: z.enum(['error', 'warning', 'question', 'hint']),
  message: z.string(),
  file: z.string().describe('Path counted from the current folder, with forward slashes.'),
  range,
  related: z.array(related).describe('Other places that explain the finding.'),
  fixes: z
    .array(fix)
    .describe('Changes that mend it; the first is the one that --fix makes when it is safe.'),
});

const counted = z.int().min(0);
export const reportSchema = z.strictObject({
  findings: z.array(reportFindingSchema),
  summary: z.strictObject({
    files: counted.describe('Files checked.'),
    errors: counted,
    warnings: counted,
    questions: counted,
    hints: counted,
    unread: counted.describe('Paths that could not be read; each is named on standard error.'),
  }),
});

export type ReportFinding = z.infer<typeof reportFindingSchema>;
export type Report = z.infer<typeof reportSchema>;

/** The published JSON Schema of `check --format json`. */
export function reportJsonSchema(): unknown {
  return {
    title: 'Findings of baywright check',
    ...z.toJSONSchema(reportSchema, { target: 'draft-2020-12' }),
  };
}
