// What stands at a place of `baywright.json`: the path of keys that leads there, and what the schema says of it.
import { settingsJsonSchema } from '@baywright/language';
import { getLocation, type JSONPath, type Location } from 'jsonc-parser';
import type { Positions } from '../../positions.js';
import type { Texts } from '../../texts/index.js';

/** A settings file as its features see it. */
export interface SettingsFile {
  readonly text: string;
  readonly positions: Positions;
  readonly snippets: boolean;
  readonly say: Texts;
}

/** What of a JSON Schema is used here. */
export interface Schema {
  readonly description?: string;
  readonly type?: string;
  readonly enum?: readonly string[];
  readonly default?: unknown;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: Schema | boolean;
  readonly items?: Schema;
}

export function placeAt(text: string, offset: number): Location {
  return getLocation(text, offset);
}

/** The schema of what lies at a path; undefined where there is no such setting. */
export function schemaAt(path: JSONPath): Schema | undefined {
  let schema: Schema | undefined = whole();
  for (const part of path) {
    if (typeof part === 'number') schema = schema?.items;
    else
      schema =
        schema?.properties?.[part] ??
        (typeof schema?.additionalProperties === 'object' ? schema.additionalProperties : undefined);
  }
  return schema;
}

/** Whether a path leads to a table of findings: how grave each is. */
export function isSeverities(path: JSONPath): boolean {
  return path.at(-1) === 'severity' && (path.length === 1 || path[0] === 'severityFor');
}

let known: Schema | undefined;

function whole(): Schema {
  known ??= settingsJsonSchema() as Schema;
  return known;
}
