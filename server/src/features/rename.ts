// Renames a thing in every file of its library, after asking whether the name may be used; so too an option of vehicles,
// its values, and the values of a condition.
import { parse, SECTIONS, type Span, type Thing } from '@baywright/language';
import {
  ErrorCodes,
  type PrepareRenameParams,
  type RenameParams,
  ResponseError,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import { type DeclaredWord, declaredWordAt, placesOf, type WordPlace } from '../declared-words.js';
import { meantAt, mentionsOfThing } from '../locate.js';
import type { Snapshot } from '../snapshot.js';
import { workspaceEdit } from '../workspace-edit.js';
import { documentFeature } from './feature.js';

const NAME = /^[\p{L}][\p{L}\p{N}]*(?:[-./×’][\p{L}\p{N}]+)*$/u;

export const prepareRename = documentFeature<PrepareRenameParams>(
  'textDocument/prepareRename',
  {},
  (snapshot, { position }) => {
    const offset = snapshot.positions.offset(position);
    const meant = meantAt(snapshot, offset);
    if (meant) return meant.thing.line === undefined ? null : snapshot.range(meant.span);
    const place = declaredWordAt(snapshot, offset);
    return place ? snapshot.range(place.name) : null;
  },
);

export const rename = documentFeature<RenameParams>(
  'textDocument/rename',
  { renameProvider: { prepareProvider: true } },
  (snapshot, { position, newName }) => {
    const offset = snapshot.positions.offset(position);
    const meant = meantAt(snapshot, offset);
    const place = meant ? undefined : declaredWordAt(snapshot, offset);
    if (place) return renameWord(snapshot, place, newName);
    if (!meant || meant.thing.line === undefined) return refuse(snapshot.say.noNameHere);
    const { thing } = meant;
    if (thing.kind !== 'source' && !NAME.test(newName)) return refuse(snapshot.say.notAName(newName));
    if (thing.kind !== 'source' && newName !== newName.toLowerCase())
      return refuse(snapshot.say.notSmall(newName));
    if (!canBeName(thing, newName)) return refuse(snapshot.say.reserved(newName));
    const edits = new Map<string, TextEdit[]>();
    for (const { path, mentions } of mentionsOfThing(snapshot.shelf, thing, (p) => snapshot.file(p)?.text)) {
      const taken =
        newName === thing.name
          ? undefined
          : snapshot.library
              .model(path)
              ?.things.find((t) => t.name === newName && thing.kind !== 'operation');
      if (taken) return refuse(snapshot.say.nameTaken(newName, taken.title));
      edits.set(
        path,
        mentions.map((m) => ({ range: snapshot.location(path, m.name).range, newText: newName })),
      );
    }
    const clash =
      newName === thing.name || thing.kind === 'operation'
        ? undefined
        : snapshot.job().scope.resolve(newName);
    if (clash) return refuse(snapshot.say.nameTaken(newName, clash.title));
    return workspaceEdit(snapshot, edits);
  },
);

function renameWord(snapshot: Snapshot, place: WordPlace, newName: string): WorkspaceEdit {
  if (!canBeWord(place.word, newName)) return refuse(snapshot.say.notAWord(newName));
  const edits = new Map<string, TextEdit[]>();
  for (const [path, places] of placesOf(snapshot, place)) {
    for (const { word, declares, vehicle } of places) {
      const taken = declares && newName !== word.text ? besides(word, vehicle) : [];
      if (taken.includes(newName)) return refuse(snapshot.say.wordTaken(newName, word.text));
    }
    edits.set(
      path,
      places.map(({ name }) => ({ range: snapshot.location(path, name).range, newText: newName })),
    );
  }
  return workspaceEdit(snapshot, edits);
}

/** Words that the same thing declares, from which the new one must differ. */
function besides(word: DeclaredWord, vehicle: Thing | undefined): string[] {
  if (word.of === 'thing') return word.thing.values.map((v) => v.text);
  const options = (vehicle?.clauses.get('option') ?? []).map(({ clause }) => clause.words.map((w) => w.text));
  return word.isValue
    ? options.filter(([name]) => name === word.option).flatMap(([, ...values]) => values)
    : [...options.map(([name = '']) => name), 'side', 'year', 'vehicle'];
}

/** Asks the language itself: whether an entry of the kind may have the name, and its lines may name it. */
function canBeName({ kind }: Thing, name: string): boolean {
  const section = SECTIONS.find((s) => s.declares === kind)?.word;
  const named =
    kind === 'source'
      ? `fasteners\n  it-bolt: It\n    torque 1 N·m, per "${name}"\n`
      : `parts\n  it: It\n    behind ${name}\n`;
  const written =
    section === undefined ? `removal\n  operation ${name}: It\n` : `${section}\n  ${name}: It\n\n${named}`;
  const { tree, findings } = parse(`procedure A-1: It\n\n${written}`, 'it.bay');
  // Which things a clause may name is another matter; the reading alone counts.
  const entry = tree.lines.find((line) => line.kind === 'section')?.children[0];
  const text = entry?.kind === 'entry' || entry?.kind === 'operation' ? entry.name?.text : undefined;
  return text === name && findings.every((f) => f.code === 'G104' || f.code === 'G117');
}

/** Asks the language itself: the word is put where it would stand. */
function canBeWord(word: DeclaredWord, text: string): boolean {
  const written =
    word.of === 'thing'
      ? `conditions\n  it: It\n    ${text}, other-one\n\nremoval\n  step: Do\n    set it ${text}\n`
      : `vehicles\n  it: It\n    option ${word.isValue ? `one ${text}` : `${text} one`}, two\n\nremoval\n  step: Do\n    lower vehicle, when ${word.isValue ? `one ${text}` : `${text} one`}\n`;
  return (
    NAME.test(text) &&
    text === text.toLowerCase() &&
    parse(`procedure A-1: It\n\n${written}`, 'it.bay').findings.length === 0
  );
}

/** Two mentions of one name on a line, edited as one where the client can: the name in its declaration and in its own block. */
export function ownMentions(snapshot: Snapshot, offset: number): { spans: Span[]; name: string } | undefined {
  const meant = meantAt(snapshot, offset);
  if (meant?.mention.way !== 'declares') return undefined;
  const spans: Span[] = [];
  for (const { path, mentions } of mentionsOfThing(
    snapshot.shelf,
    meant.thing,
    (p) => snapshot.file(p)?.text,
  )) {
    if (path !== snapshot.path) return undefined;
    spans.push(...mentions.map((m) => m.name));
  }
  return spans.length > 1 ? { spans, name: meant.thing.name } : undefined;
}

function refuse(message: string): never {
  throw new ResponseError(ErrorCodes.InvalidParams, message);
}
