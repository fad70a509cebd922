// The keys of `baywright.json`, with the words that editors and the published JSON Schema show for each.
import * as z from 'zod';
import { LANGUAGES } from '../vocabulary/kinds.js';

/** The name of the settings file; it marks the root of a library. The nearest one upward holds, none are merged. */
export const SETTINGS_FILE = 'baywright.json';

/** What a finding may be turned into. An error stays an error: only `accept CODE: reason` in the file silences one. */
const SEVERITY_LEVELS = ['off', 'hint', 'question', 'warning', 'error'] as const;

const glob = z.string().min(1);
const severities = z.record(z.string(), z.enum(SEVERITY_LEVELS));

const shop = z.strictObject({
  name: z.string().default('').describe('The name of the shop, printed on every page.'),
  logo: z
    .string()
    .optional()
    .describe(
      'The shop’s own picture for the first page: an SVG or PNG file, its path counted from this file.',
    ),
});

const severityFor = z.strictObject({
  files: z.array(glob).min(1).describe('Globs counted from this file, such as "drafts/**".'),
  severity: severities.describe(
    'As `severity`, for these files alone. The last entry that names a file wins.',
  ),
});

const starterRuleOff = z.strictObject({
  rule: z.string().min(1).describe('The name of a starter rule, or "all".'),
  because: z.string().min(1).describe('Why this shop does without it; printed in the review report.'),
});

const release = z.strictObject({
  by: z
    .array(z.string().min(1))
    .default([])
    .describe('Initials of those who may release a procedure. Empty: anyone.'),
  provedBy: z
    .array(z.string().min(1))
    .default([])
    .describe('Initials of those who may prove a procedure on a vehicle. Empty: anyone.'),
  twoInitials: z
    .boolean()
    .default(true)
    .describe(
      'A released procedure carries two different people, one who proved it and one who released it; or one, with a note on the status line that says why.',
    ),
  reviewDay: z
    .boolean()
    .default(false)
    .describe(
      'A procedure is only issued when a day is set for its next review, by `review` or by `reviewMonths`.',
    ),
  partNumbers: z.boolean().default(false).describe('Ask for a part number on every part that is renewed.'),
  reviewMonths: z
    .int()
    .min(1)
    .max(600)
    .optional()
    .describe('Months after which a released procedure is due for review.'),
});

const print = z.strictObject({
  twoSided: z
    .boolean()
    .default(false)
    .describe(
      'Guides are printed on both sides of the paper: the binding edge alternates and the record starts on a sheet of its own.',
    ),
  safetyColours: z
    .boolean()
    .default(false)
    .describe(
      'Signal words and signs of protection are in the colours of the safety standards (ANSI Z535, ISO 3864) instead of black.',
    ),
});

/** The settings of a library. Every key has a default, so that `{}` and no file at all mean the same. */
export const settingsSchema = z.strictObject({
  $schema: z.string().optional().describe('The JSON Schema of this file, for editors.'),
  shop: shop.prefault({}).describe('Whose procedures these are.'),
  page: z.enum(['A4', 'Letter']).default('A4').describe('The paper that guides are printed on.'),
  print: print.prefault({}).describe('How guides are printed.'),
  units: z
    .enum(['as written', 'metric first', 'US first'])
    .default('as written')
    .describe('Which system stands first in a guide; the other one follows it smaller.'),
  languages: z
    .array(z.enum(LANGUAGES))
    .min(1)
    .default(['en'])
    .describe('Languages that guides are made in. The first is the one the procedures are written in.'),
  severity: severities
    .default({})
    .describe(
      'How grave a finding is here, by code ("W102"), name ("long-sentence") or letter ("W"). Errors stay errors.',
    ),
  severityFor: z.array(severityFor).default([]).describe('How grave a finding is in some files.'),
  wording: z
    .boolean()
    .default(true)
    .describe('Whether `check` also reviews the wording (codes that start with W).'),
  starterRulesOff: z
    .array(starterRuleOff)
    .default([])
    .describe('Starter rules of usual practice that this shop does without, each with its reason.'),
  release: release.prefault({}).describe('What a procedure needs before it may be released.'),
  output: z
    .string()
    .min(1)
    .default('out')
    .describe('The folder that guides are written to, counted from this file.'),
  issues: z
    .string()
    .min(1)
    .default('issued')
    .describe(
      'The folder that issues are kept in, counted from this file. What is in it is history and never checked.',
    ),
  url: z
    .url({ protocol: /^https?$/ })
    .optional()
    .describe(
      'The address under which the shop keeps its guides; printed so that a paper copy finds its newest issue.',
    ),
  ignore: z
    .array(glob)
    .default([])
    .describe('Files and folders that are left alone: globs counted from this file.'),
});

export type Settings = z.output<typeof settingsSchema>;
export type SeverityLevel = (typeof SEVERITY_LEVELS)[number];

/** What holds where no settings file says otherwise. */
export const DEFAULT_SETTINGS: Settings = settingsSchema.parse({});

/** The published JSON Schema (draft 2020-12) of the settings file. */
export function settingsJsonSchema(): unknown {
  const schema = z.toJSONSchema(settingsSchema, { io: 'input', target: 'draft-2020-12' });
  return { title: 'Settings of a Baywright library', ...schema };
}
