// The page of settings, from the schema that reads them.
import * as z from 'zod';
import { SETTINGS_FILE, settingsJsonSchema } from '../settings/schema.js';
import { code, type Page, page, table } from './markdown.js';

/** The parts of a JSON Schema that the page shows. */
const node = z.looseObject({
  description: z.string().optional(),
  type: z.string().optional(),
  enum: z.array(z.unknown()).optional(),
  default: z.unknown().optional(),
  get properties() {
    return z.record(z.string(), node).optional();
  },
  get items() {
    return node.optional();
  },
});
type Node = z.infer<typeof node>;

export function settingPages(): Page[] {
  const rows = rowsOf(node.parse(settingsJsonSchema()), '');
  return [
    page(
      'settings.md',
      'Settings',
      `\`${SETTINGS_FILE}\` stands at the root of a library. The nearest one upward holds; none are merged. Every key may be left out, and no file at all means the same as \`{}\`.`,
      table(['Key', 'Value', 'Unless given', 'Says'], rows),
    ),
  ];
}

function rowsOf(parent: Node, path: string): string[][] {
  return Object.entries(parent.properties ?? {}).flatMap(([key, child]) => {
    const own = `${path}${key}`;
    const row = [code(own), valueWords(child), usual(child), child.description ?? ''];
    return [row, ...rowsOf(child, `${own}.`), ...(child.items ? rowsOf(child.items, `${own}[].`) : [])];
  });
}

function valueWords(child: Node): string {
  if (child.enum) return child.enum.map((value) => code(String(value))).join(', ');
  if (child.items) return `list of ${valueWords(child.items)}`;
  return (
    { string: 'text', boolean: '`true` or `false`', integer: 'a whole number', object: 'object' }[
      child.type ?? ''
    ] ?? ''
  );
}

function usual(child: Node): string {
  const value = child.default;
  if (value === undefined || typeof value === 'object') {
    return Array.isArray(value) && value.length > 0 ? code(JSON.stringify(value)) : '';
  }
  return value === '' ? '' : code(String(value));
}
