// Completion in `baywright.json`: keys that may stand here and do not yet, values that a key may have.
import { DIAGNOSTICS, starterRules } from '@baywright/language';
import { findNodeAtLocation, type JSONPath, parseTree } from 'jsonc-parser';
import {
  type CompletionItem,
  CompletionItemKind,
  type CompletionList,
  type CompletionParams,
  InsertTextFormat,
  MarkupKind,
} from 'vscode-languageserver';
import { isSeverities, placeAt, type Schema, type SettingsFile, schemaAt } from './place.js';

export function settingsCompletion(
  file: SettingsFile,
  { position }: Pick<CompletionParams, 'position'>,
): CompletionList {
  const { text, positions } = file;
  const offset = positions.offset(position);
  const { path, isAtPropertyKey, previousNode } = placeAt(text, offset);
  const written =
    previousNode && previousNode.offset <= offset && offset <= previousNode.offset + previousNode.length
      ? { start: previousNode.offset, end: previousNode.offset + previousNode.length }
      : { start: offset - (/[\w"-]*$/.exec(text.slice(0, offset))?.[0].length ?? 0), end: offset };
  const offers = isAtPropertyKey ? keysAt(file, path.slice(0, -1), written.end) : valuesAt(file, path);
  const range = positions.range(written);
  const items = offers.map(
    ({ insert, ...item }, i): CompletionItem => ({
      ...item,
      filterText: JSON.stringify([item.label, item.detail].filter((t) => t !== undefined).join(' ')),
      sortText: String(i).padStart(4, '0'),
      textEdit: { range, newText: insert },
    }),
  );
  return { isIncomplete: false, items };
}

type Offer = Pick<CompletionItem, 'label' | 'kind' | 'documentation' | 'detail' | 'insertTextFormat'> & {
  readonly insert: string;
};

function keysAt({ text, snippets }: SettingsFile, path: JSONPath, end: number): Offer[] {
  const root = parseTree(text);
  const here = root && findNodeAtLocation(root, path);
  const there = new Set(here?.children?.map((property) => String(property.children?.[0]?.value)));
  const rest = text.slice(end);
  // A key that has its value already only changes its name.
  const behind = /^\s*:/.test(rest) ? undefined : /^\s*"/.test(rest) ? ',' : '';
  const offer = (label: string, schema: Schema | undefined, docs: string | undefined): Offer => {
    const usual = behind === undefined ? '' : `: ${usualValue(schema, snippets)}${behind}`;
    return {
      label,
      kind: CompletionItemKind.Property,
      insert: `${JSON.stringify(label)}${usual}`,
      insertTextFormat: snippets ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
      ...(docs === undefined ? {} : { documentation: { kind: MarkupKind.Markdown, value: docs } }),
    };
  };
  const schema = schemaAt(path);
  if (isSeverities(path)) {
    const level = schemaAt([...path, '']);
    return DIAGNOSTICS.filter((def) => def.severity !== 'error' && !there.has(def.code)).map((def) => ({
      ...offer(def.code, level, def.why),
      detail: def.name,
    }));
  }
  return Object.entries(schema?.properties ?? {})
    .filter(([key]) => !there.has(key))
    .map(([key, own]) => offer(key, own, own.description));
}

/** The usual value of a setting, to be overwritten. */
function usualValue(schema: Schema | undefined, snippets: boolean): string {
  const usual = JSON.stringify(schema?.default ?? EMPTY[schema?.enum ? 'enum' : (schema?.type ?? '')] ?? '');
  if (!snippets) return usual;
  if (schema?.enum) return `"\${1|${schema.enum.join(',')}|}"`;
  const inner = /^(["[{])(.*)(["\]}])$/.exec(usual);
  const stop = (text: string): string => (text === '' ? '$1' : `\${1:${text.replaceAll(/[\\$}]/g, '\\$&')}}`);
  return inner ? `${inner[1]}${stop(inner[2] ?? '')}${inner[3]}` : stop(usual);
}

const EMPTY: Readonly<Record<string, unknown>> = {
  enum: 'warning',
  string: '',
  array: [],
  object: {},
  boolean: false,
  integer: 12,
};

function valuesAt({ say }: SettingsFile, path: JSONPath): Offer[] {
  const value = (label: string, detail?: string): Offer => ({
    label,
    kind: CompletionItemKind.Value,
    insert: JSON.stringify(label),
    insertTextFormat: InsertTextFormat.PlainText,
    ...(detail === undefined ? {} : { detail }),
  });
  if (path[0] === 'starterRulesOff' && path.at(-1) === 'rule')
    return [value('all'), ...starterRules().map(({ thing }) => value(thing.name, thing.title))];
  const schema = schemaAt(path);
  if (schema?.type === 'boolean')
    return [true, false].map((flag) => ({ ...value(String(flag)), insert: String(flag) }));
  return (schema?.enum ?? []).map((word) => value(word, schema?.default === word ? say.usual : undefined));
}
