// Hover in `baywright.json`: what a setting does, what it may be, what it is where it is not written.
import { DIAGNOSTICS } from '@baywright/language';
import { type Hover, type HoverParams, MarkupKind } from 'vscode-languageserver';
import type { Texts } from '../../texts/index.js';
import { isSeverities, placeAt, type SettingsFile, schemaAt } from './place.js';

export function settingsHover(
  { text, positions, say }: SettingsFile,
  { position }: Pick<HoverParams, 'position'>,
): Hover | null {
  const { path, previousNode } = placeAt(text, positions.offset(position));
  const value = about(path, say);
  if (value === undefined) return null;
  return {
    contents: { kind: MarkupKind.Markdown, value },
    ...(previousNode
      ? {
          range: positions.range({
            start: previousNode.offset,
            end: previousNode.offset + previousNode.length,
          }),
        }
      : {}),
  };
}

function about(path: (string | number)[], say: Texts): string | undefined {
  if (isSeverities(path.slice(0, -1))) {
    const key = path.at(-1);
    const def = DIAGNOSTICS.find((d) => d.code === key || d.name === key);
    return def && `**${def.code} ${def.name}**: ${def.why}`;
  }
  const schema = schemaAt(path);
  if (schema?.description === undefined) return undefined;
  const words = schema.enum ?? schema.items?.enum;
  const facts = [
    words?.map((word) => `\`${word}\``).join(' · '),
    schema.default === undefined ? undefined : `\`${JSON.stringify(schema.default)}\``,
  ];
  return [`**${path.join('.')}**: ${schema.description}`, facts[0], facts[1] && `${say.usual}: ${facts[1]}`]
    .filter((line) => line !== undefined)
    .join('\n\n');
}
