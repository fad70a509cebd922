// Reads one editor setting. The manifest declares a default for each, so a value is always there.
import { workspace } from 'vscode';
import type { EditorSettings } from './schema.js';

/** The value of `baywright.NAME`, of the type that the schema gives it. */
export function setting<Name extends keyof EditorSettings>(name: Name): EditorSettings[Name] {
  // The manifest is generated from the same schema; a value of another type is refused by the editor's settings page.
  return workspace.getConfiguration('baywright').get(name) as EditorSettings[Name];
}
