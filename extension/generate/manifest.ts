// The parts of the extension manifest that come from tables: settings from their schema, token types from the protocol.

import { TOKEN_MODIFIERS, TOKEN_TYPES } from '@baywright/server/protocol';
import { z } from 'zod';
import { editorSettings } from '../src/settings/schema.js';

export interface ManifestParts {
  readonly configuration: object;
  readonly semanticTokenTypes: readonly object[];
  readonly semanticTokenModifiers: readonly object[];
  readonly semanticTokenScopes: readonly object[];
  /** English texts for package.nls.json, by key. */
  readonly texts: Readonly<Record<string, string>>;
}

interface SettingSchema {
  readonly type: string;
  readonly default: unknown;
  readonly description: string;
  readonly enum?: readonly string[];
  readonly choices?: readonly string[];
  readonly items?: object;
}

export function manifestParts(): ManifestParts {
  const texts: Record<string, string> = {};
  const properties: Record<string, object> = {};
  Object.entries(settingSchemas()).forEach(([name, schema], order) => {
    const key = `setting.${name}`;
    texts[key] = schema.description;
    const choices = schema.choices?.map((text, index) => {
      texts[`${key}.${index}`] = text;
      return `%${key}.${index}%`;
    });
    properties[`baywright.${name}`] = {
      type: schema.type,
      ...(schema.enum ? { enum: schema.enum } : {}),
      ...(choices ? { enumDescriptions: choices } : {}),
      ...(schema.items ? { items: schema.items } : {}),
      default: schema.default,
      description: `%${key}%`,
      order,
      scope: name.startsWith('findings') || name.startsWith('tasks') ? 'resource' : 'window',
    };
  });
  return {
    configuration: { title: 'Baywright', properties },
    semanticTokenTypes: OWN_TYPES.map((type) => ({
      id: type,
      superType: SUPER_TYPE[type] ?? 'variable',
      description: describe(type),
    })),
    semanticTokenModifiers: OWN_MODIFIERS.map((id) => ({ id, description: MODIFIER_DOCS[id] ?? id })),
    semanticTokenScopes: [
      {
        language: 'baywright',
        scopes: Object.fromEntries(Object.entries(SCOPES).map(([type, scope]) => [type, [scope]])),
      },
    ],
    texts,
  };
}

function settingSchemas(): Record<string, SettingSchema> {
  const schema = z.toJSONSchema(editorSettings, { io: 'input' });
  return schema.properties as unknown as Record<string, SettingSchema>;
}

const STANDARD_TYPES = new Set(['keyword', 'function', 'number', 'string', 'comment', 'operator']);
const OWN_TYPES: readonly string[] = TOKEN_TYPES.filter((type) => !STANDARD_TYPES.has(type));
const OWN_MODIFIERS: readonly string[] = TOKEN_MODIFIERS.filter((modifier) => modifier !== 'declaration');

const SUPER_TYPE: Readonly<Record<string, string>> = {
  signal: 'keyword',
  unit: 'keyword',
  hole: 'keyword',
  operation: 'function',
  rule: 'function',
};

const MODIFIER_DOCS: Readonly<Record<string, string>> = {
  critical: 'A thing that the house marks as critical.',
  unknown: 'A name that nothing declares yet.',
};

/** Scopes that common themes colour, for themes that know no token types. */
const SCOPES: Readonly<Record<string, string>> = {
  function: 'support.function.verb.baywright',
  part: 'variable.other.name.part.baywright',
  'part.declaration': 'entity.name.type.part.baywright',
  fastener: 'variable.other.constant.fastener.baywright',
  'fastener.declaration': 'entity.name.type.fastener.baywright',
  connection: 'variable.parameter.connection.baywright',
  circuit: 'variable.parameter.circuit.baywright',
  fluid: 'support.type.fluid.baywright',
  adjustment: 'variable.other.property.adjustment.baywright',
  condition: 'variable.other.property.condition.baywright',
  limit: 'variable.other.property.limit.baywright',
  supply: 'support.class.supply.baywright',
  temporary: 'variable.language.temporary.baywright',
  place: 'variable.other.name.place.baywright',
  tool: 'support.class.tool.baywright',
  vehicle: 'entity.name.type.vehicle.baywright',
  source: 'string.quoted.double.source.baywright',
  message: 'entity.name.tag.message.baywright',
  rule: 'entity.name.function.rule.baywright',
  operation: 'entity.name.function.operation.baywright',
  signal: 'keyword.control.signal.baywright',
  unit: 'keyword.other.unit.baywright',
  hole: 'constant.language.hole.baywright',
};

function describe(type: string): string {
  if (type === 'hole') return 'What is not known yet.';
  if (type === 'signal') return 'A signal word: danger, warning, caution, notice.';
  if (type === 'unit') return 'The unit of a quantity.';
  return `The name of a ${type}.`;
}
