// The faulty sample libraries: one small library for each kind of finding, with the finding marked under its line.
// They are the wrong examples of the catalogue, so that a finding is described, tested and shown in one place.
import type { DiagnosticDef } from '../../language/src/diagnostics/define.js';
import { DIAGNOSTICS } from '../../language/src/diagnostics/index.js';
import { SETTINGS_FILE } from '../../language/src/settings/index.js';
import { splitFiles } from '../suite-helper.js';
import type { GeneratedFile } from './files.js';

const FAULTY_FOLDER = 'samples/faulty';

export function faultyFiles(): GeneratedFile[] {
  const settings = { path: `${FAULTY_FOLDER}/${SETTINGS_FILE}`, text: () => '{}\n' };
  return [settings, ...DIAGNOSTICS.filter((def) => def.wrong !== '').flatMap(libraryFor)];
}

/** The name of the folder that shows a finding: `S301-never-put-back`. */
export function faultyName(def: Pick<DiagnosticDef<never>, 'code' | 'name'>): string {
  return `${def.code}-${def.name}`;
}

/** The files of one wrong example; each folder is a library of its own, so that numbers and names do not meet. */
function libraryFor(def: DiagnosticDef<never>): GeneratedFile[] {
  const files = new Map([[SETTINGS_FILE, '{}\n'], ...splitFiles(def.wrong)]);
  return [...files].map(([path, text]) => ({
    path: `${FAULTY_FOLDER}/${faultyName(def)}/${path}`,
    text: () => (text.endsWith('\n') ? text : `${text}\n`),
  }));
}
