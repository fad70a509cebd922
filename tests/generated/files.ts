// Files in the repository that are made from the code. `npm run generate` writes them; the tests hold them to it.
import { readFileSync } from 'node:fs';
import { COMMANDS } from '../../compiler/src/cli/commands/index.js';
import { manualPage } from '../../compiler/src/cli/manual.js';
import { reportJsonSchema } from '../../compiler/src/cli/report/schema.js';
import { issueRecordJsonSchema } from '../../compiler/src/desk/issue-record.js';
import { exportJsonSchema } from '../../compiler/src/desk/model-schema.js';
import { columnMapJsonSchema } from '../../compiler/src/desk/spec-import.js';
import { extensionFiles } from '../../extension/generate/files.js';
import { referencePages } from '../../language/src/reference/index.js';
import { settingsJsonSchema } from '../../language/src/settings/index.js';
import { commandsPage } from './commands.js';
import { faultyFiles } from './faulty.js';
import { thirdPartyPage } from './third-party.js';

export interface GeneratedFile {
  /** Path from the repository's root. */
  readonly path: string;
  text(): string;
}

export const REFERENCE_FOLDER = 'language/docs/reference';

const json = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;

export const GENERATED_FILES: readonly GeneratedFile[] = [
  { path: 'compiler/schemas/baywright.schema.json', text: () => json(settingsJsonSchema()) },
  { path: 'compiler/schemas/check-report.schema.json', text: () => json(reportJsonSchema()) },
  { path: 'compiler/schemas/export.schema.json', text: () => json(exportJsonSchema()) },
  { path: 'compiler/schemas/issue.schema.json', text: () => json(issueRecordJsonSchema()) },
  { path: 'compiler/schemas/columns.schema.json', text: () => json(columnMapJsonSchema()) },
  { path: 'compiler/docs/commands.md', text: commandsPage },
  { path: 'compiler/man/baywright.1', text: () => manualPage(COMMANDS) },
  { path: 'compiler/THIRD-PARTY.md', text: thirdPartyPage },
  ...faultyFiles(),
  ...referencePages().map(({ path, text }) => ({ path: `${REFERENCE_FOLDER}/${path}`, text: () => text })),
  ...extensionFiles(readExtension).map(({ name, text }) => ({ path: `extension/${name}`, text })),
];

function readExtension(name: string): string {
  return readFileSync(new URL(`../../extension/${name}`, import.meta.url), 'utf8');
}
