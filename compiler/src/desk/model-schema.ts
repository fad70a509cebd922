// The checked model as data for other programs: its shape, published as a JSON Schema.
import * as z from 'zod';

const lineNumber = z.int().min(1).describe('Line in its file, from 1.');
const text = z.string();

const quantity = z.strictObject({
  written: text.describe('As the formatter writes it: `105 to 115 N·m`.'),
  kind: text.describe('What it measures: torque, length, volume …'),
  back: z.boolean().optional().describe('A turn back, in a tightening of several stages.'),
  nominal: z.number().optional().describe('In the coherent SI unit of its kind (N·m, m, m³, Pa, s, °).'),
  low: z.number().optional().describe('Lower limit, same unit.'),
  high: z.number().optional().describe('Upper limit, same unit.'),
});

const clause = z.strictObject({
  word: text.describe('The word it starts with: torque, held by, number …'),
  written: text,
  when: text.optional().describe('The variants it holds on; absent when it holds on all.'),
  quantities: z.array(quantity).optional(),
  names: z.array(text).optional().describe('Names of other entries.'),
});

const thing = z.strictObject({
  name: text,
  kind: text.describe('part, fastener, fluid, tool, supply, rule …'),
  title: text,
  file: text.describe('Library path of the file that declares it.'),
  line: lineNumber,
  marks: z.array(text).optional(),
  values: z.array(text).optional().describe('Values of a condition, the one at rest first.'),
  clauses: z.array(clause),
});

const workLine = z.strictObject({
  step: text.describe('The title of its step, or of its section.'),
  text: text.describe('The line in its one form, with its prose.'),
  file: text,
  line: lineNumber,
});

const modelSchema = z.strictObject({
  format: z.literal(1),
  program: text.describe('The version that made it.'),
  file: text.describe('Library path.'),
  kind: z.enum(['procedure', 'catalogue', 'other']),
  number: text.nullable(),
  title: text,
  status: z.strictObject({ word: text, by: z.array(text), day: text.nullable(), note: text }),
  review: text.nullable(),
  revisions: z.array(z.strictObject({ number: z.number(), day: text.nullable(), change: text })),
  appliesTo: z.array(
    z.strictObject({ vehicle: text, title: text, from: z.number().nullable(), to: z.number().nullable() }),
  ),
  sides: z.array(text),
  uses: z.array(text).describe('Library paths of the files it takes in.'),
  performs: z.array(z.strictObject({ number: text.nullable(), operation: text })),
  things: z.array(thing).describe('Its own entries, and those of its imports.'),
  work: z.array(workLine),
  findings: z.strictObject({
    errors: z.int().min(0),
    warnings: z.int().min(0),
    questions: z.int().min(0),
    hints: z.int().min(0),
  }),
});
export type CheckedModel = z.infer<typeof modelSchema>;
export type ModelThing = CheckedModel['things'][number];
export type ModelClause = ModelThing['clauses'][number];

const exportSchema = z.strictObject({ format: z.literal(1), files: z.array(modelSchema) });

/** The published JSON Schema of `export --format json`. */
export function exportJsonSchema(): unknown {
  return {
    title: 'Checked procedures and catalogues',
    ...z.toJSONSchema(exportSchema, { target: 'draft-2020-12' }),
  };
}
