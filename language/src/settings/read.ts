// Reads a settings file: values with their defaults, and a finding for every mistake at its own place.
import {
  findNodeAtLocation,
  type JSONPath,
  type Node,
  type ParseError,
  parseTree,
  printParseErrorCode,
} from 'jsonc-parser';
import * as z from 'zod';
import { type DiagnosticDef, type Finding, finding } from '../diagnostics/define.js';
import {
  settingsUnreadable,
  settingUnknown,
  settingWrong,
  severityRefused,
  starterRuleUnknown,
} from '../diagnostics/settings.js';
import { starterRules } from '../rules/starter.js';
import { type Span, span } from '../text/span.js';
import { nearestWord } from '../vocabulary/near.js';
import { DEFAULT_SETTINGS, type Settings, settingsSchema } from './schema.js';

/** The part of a catalogue row that severity settings need. */
export type KnownCode = Pick<DiagnosticDef<never>, 'code' | 'name' | 'severity'>;

export interface SettingsReading {
  readonly settings: Settings;
  readonly findings: readonly Finding[];
}

/**
 * Reads the text of a settings file. Never throws: what cannot be used is left at its default and reported.
 * `file` is the path that findings name; `codes` are the findings whose severity may be set.
 */
export function readSettings(file: string, text: string, codes: readonly KnownCode[]): SettingsReading {
  const source = text.startsWith('\uFEFF') ? ` ${text.slice(1)}` : text;
  const errors: ParseError[] = [];
  const tree = parseTree(source, errors, { disallowComments: false, allowTrailingComma: true });
  const broken = errors[0];
  if (tree === undefined || broken !== undefined) {
    const at =
      broken === undefined ? span(0, 0) : span(broken.offset, broken.offset + Math.max(1, broken.length));
    const problem = tree === undefined ? 'the file holds no value' : problemOf(broken);
    return {
      settings: DEFAULT_SETTINGS,
      findings: [finding(settingsUnreadable, { file, span: clip(at, text) }, { problem })],
    };
  }
  const findings: Finding[] = [];
  const settings = usable(file, tree, findings);
  findings.push(...severityFindings(file, tree, settings, codes), ...starterFindings(file, tree, settings));
  return { settings, findings: findings.sort((a, b) => a.span.start - b.span.start) };
}

const problemOf = (error: ParseError | undefined): string =>
  (error && PROBLEMS[printParseErrorCode(error.error)]) ?? 'something is missing here';

const PROBLEMS: Readonly<Record<string, string>> = {
  InvalidSymbol: 'text stands in double quotes',
  InvalidNumberFormat: 'this number cannot be read',
  PropertyNameExpected: 'a key in double quotes is expected here',
  ValueExpected: 'a value is expected here',
  ColonExpected: 'a colon is expected here',
  CommaExpected: 'a comma is missing before this',
  CloseBraceExpected: 'a closing } is missing',
  CloseBracketExpected: 'a closing ] is missing',
  EndOfFileExpected: 'nothing may follow the last }',
  UnexpectedEndOfString: 'a closing quote is missing',
  InvalidCharacter: 'a character that may not stand here',
  InvalidEscapeCharacter: 'this \\ escape is not known; write \\\\ for a backslash',
  InvalidUnicode: 'this \\u escape is not complete',
};

/** Takes away what the schema refuses, key by key, until the rest is accepted. */
function usable(file: string, tree: Node, findings: Finding[]): Settings {
  const removed: JSONPath[] = [];
  for (let round = 0; round < 20; round++) {
    const result = settingsSchema.safeParse(valueWithout(tree, removed, []));
    if (result.success) return result.data;
    const before = [...removed];
    for (const issue of result.error.issues) {
      const path = pathInFile(issue.path, before);
      for (const found of describe(file, tree, issue, path)) {
        findings.push(found.finding);
        if (found.path.length === 0) return DEFAULT_SETTINGS;
        removed.push(found.path);
      }
    }
  }
  return DEFAULT_SETTINGS;
}

/** Entries that were taken away move the others up: this gives back the places that they have in the file. */
function pathInFile(path: readonly PropertyKey[], removed: readonly JSONPath[]): JSONPath {
  const here: JSONPath = [];
  for (const part of path) {
    let place = typeof part === 'symbol' ? String(part) : part;
    if (typeof place === 'number') {
      let left = place;
      place = 0;
      for (; isRemoved([...here, place], removed) || left > 0; place++)
        if (!isRemoved([...here, place], removed)) left--;
    }
    here.push(place);
  }
  return here;
}

function describe(
  file: string,
  tree: Node,
  issue: z.core.$ZodIssue,
  path: JSONPath,
): { path: JSONPath; finding: Finding }[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => {
      const at = { file, span: keySpan(tree, [...path, key]) };
      return {
        path: [...path, key],
        finding: finding(settingUnknown, at, {
          path: show([...path, key]),
          near: nearestWord(key, keysAt(path)),
        }),
      };
    });
  }
  const node = findNodeAtLocation(tree, path);
  const at = { file, span: node === undefined ? keySpan(tree, path) : nodeSpan(node) };
  return [
    {
      path: refusedAt(tree, path),
      finding: finding(settingWrong, at, { path: show(path), expected: expected(issue), found: found(node) }),
    },
  ];
}

/** What may stand there, in words. */
function expected(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return TYPES[issue.expected] ?? issue.expected;
    case 'invalid_value':
      return oneOf(issue.values.map((value) => JSON.stringify(value)));
    case 'too_small':
      return issue.origin === 'number' || issue.origin === 'int'
        ? `${issue.minimum} or more`
        : 'at least one entry';
    case 'too_big':
      return `${issue.maximum} or less`;
    case 'invalid_format':
      return issue.format === 'url'
        ? 'an address that starts with https:// or http://'
        : `text in the form ${issue.format}`;
    default:
      return issue.message;
  }
}

const TYPES: Readonly<Record<string, string>> = {
  string: 'text',
  boolean: 'true or false',
  int: 'a whole number',
  number: 'a number',
  array: 'a list in [ ]',
  object: 'a group of keys in { }',
  record: 'a group of keys in { }',
};

function found(node: Node | undefined): string {
  if (node === undefined) return 'nothing';
  if (node.type === 'object') return node.children?.length === 0 ? '{ }' : 'a group of keys';
  if (node.type === 'array') return node.children?.length === 0 ? 'an empty list' : 'a list';
  return JSON.stringify(node.value);
}

/** Severity keys must name a code, a finding's name or a letter, and an error stays an error. */
function severityFindings(
  file: string,
  tree: Node,
  settings: Settings,
  codes: readonly KnownCode[],
): Finding[] {
  const groups: [JSONPath, Settings['severity']][] = [
    [['severity'], settings.severity],
    ...settings.severityFor.map((entry, i): [JSONPath, Settings['severity']] => [
      ['severityFor', i, 'severity'],
      entry.severity,
    ]),
  ];
  return groups.flatMap(([path, group]) =>
    Object.entries(group).flatMap(([key, level]) => {
      const problem = severityProblem(key, level, codes);
      return problem === undefined
        ? []
        : [finding(severityRefused, { file, span: keySpan(tree, [...path, key]) }, { key, problem })];
    }),
  );
}

function severityProblem(key: string, level: string, codes: readonly KnownCode[]): string | undefined {
  const named = codes.filter((def) => def.code === key || def.name === key || def.code.slice(0, 1) === key);
  if (named.length === 0) {
    const close = nearestWord(
      key,
      codes.flatMap((def) => [def.code, def.name]),
    );
    return `no finding has this code, name or letter${close.length === 0 ? '' : `; near it: ${close.join(', ')}`}`;
  }
  if (level !== 'error' && named.every((def) => def.severity === 'error')) {
    return 'an error stays an error; where a line is known to be right, write `accept CODE: reason` above it';
  }
  return undefined;
}

/** A starter rule that is switched off must be one. */
function starterFindings(file: string, tree: Node, settings: Settings): Finding[] {
  const known = [...starterRules().map(({ thing }) => thing.name), ALL_STARTER_RULES];
  const entries = findNodeAtLocation(tree, ['starterRulesOff'])?.children ?? [];
  return entries.flatMap((entry) => {
    const node = findNodeAtLocation(entry, ['rule']);
    const rule: unknown = node?.value;
    const isKept = settings.starterRulesOff.some((off) => off.rule === rule);
    if (node === undefined || typeof rule !== 'string' || !isKept || known.includes(rule)) return [];
    return [
      finding(starterRuleUnknown, { file, span: nodeSpan(node) }, { rule, near: nearestWord(rule, known) }),
    ];
  });
}

/** Stands for every rule of the starter pack. */
const ALL_STARTER_RULES = 'all';

/** The value of a JSON node, without the places in `removed`. */
function valueWithout(node: Node, removed: readonly JSONPath[], here: JSONPath): unknown {
  if (node.type === 'object') {
    const entries = (node.children ?? []).flatMap((property): [string, unknown][] => {
      const [key, value] = property.children ?? [];
      if (key === undefined || value === undefined) return [];
      const path = [...here, String(key.value)];
      return isRemoved(path, removed) ? [] : [[String(key.value), valueWithout(value, removed, path)]];
    });
    return Object.fromEntries(entries);
  }
  if (node.type === 'array') {
    return (node.children ?? []).flatMap((child, i) => {
      const path = [...here, i];
      return isRemoved(path, removed) ? [] : [valueWithout(child, removed, path)];
    });
  }
  return node.value;
}

function isRemoved(path: JSONPath, removed: readonly JSONPath[]): boolean {
  return removed.some((gone) => gone.length === path.length && gone.every((part, i) => part === path[i]));
}

/** A list loses only its bad entry, anything else loses the key. A missing key takes away what misses it. */
function refusedAt(tree: Node, path: JSONPath): JSONPath {
  let at = path;
  while (at.length > 0 && findNodeAtLocation(tree, at) === undefined) at = at.slice(0, -1);
  return at;
}

function keysAt(path: JSONPath): readonly string[] {
  let schema: unknown = settingsSchema;
  for (const part of path) {
    schema = unwrapped(schema);
    if (schema instanceof z.ZodArray) schema = schema.element;
    else if (schema instanceof z.ZodObject) schema = schema.shape[String(part)];
  }
  const here = unwrapped(schema);
  return here instanceof z.ZodObject ? Object.keys(here.shape) : [];
}

function unwrapped(schema: unknown): unknown {
  let inner = schema;
  while (inner instanceof z.ZodDefault || inner instanceof z.ZodPrefault || inner instanceof z.ZodOptional)
    inner = inner.unwrap();
  return inner;
}

const oneOf = (values: readonly string[]): string =>
  values.length === 1 ? (values[0] ?? '') : `${values.slice(0, -1).join(', ')} or ${values.at(-1) ?? ''}`;

/** A path as people write it: `release.by[2]`. */
function show(path: JSONPath): string {
  if (path.length === 0) return 'the whole file';
  return path
    .map((part, i) => (typeof part === 'number' ? `[${part}]` : i === 0 ? part : `.${part}`))
    .join('');
}

function keySpan(tree: Node, path: JSONPath): Span {
  const value = findNodeAtLocation(tree, path);
  const key = value?.parent?.type === 'property' ? value.parent.children?.[0] : value;
  if (key !== undefined) return nodeSpan(key);
  return path.length === 0 ? span(tree.offset, tree.offset + 1) : keySpan(tree, path.slice(0, -1));
}

const nodeSpan = (node: Node): Span => span(node.offset, node.offset + node.length);
const clip = (at: Span, text: string): Span =>
  span(Math.min(at.start, text.length), Math.min(at.end, text.length));
