// Words that a thing declares beside its name: options of a vehicle with their values, values of a condition,
// positions of a part. What stands at a place, and every place of the library where it is meant.
import {
  type Clause,
  type EventPattern,
  everyLine,
  type FileModel,
  type Item,
  type Line,
  type Name,
  pathAt,
  type Scope,
  scopeOf,
  type Thing,
  touches,
  VERB_BY_WORD,
} from '@baywright/language';
import type { Shelf } from './shelf.js';
import type { Snapshot } from './snapshot.js';

/** An option or one of its values, or a value of one thing. */
export type DeclaredWord =
  | { readonly of: 'option'; readonly option: string; readonly text: string; readonly isValue: boolean }
  | { readonly of: 'thing'; readonly thing: Thing; readonly text: string };

export interface WordPlace {
  readonly word: DeclaredWord;
  readonly name: Name;
  readonly declares: boolean;
  /** The vehicle whose line declares the option. */
  readonly vehicle?: Thing;
}

/** The word declared or used at an offset. */
export function declaredWordAt(snapshot: Snapshot, offset: number): WordPlace | undefined {
  const model = snapshot.library.model(snapshot.path);
  const line = pathAt(snapshot.tree, offset).pop();
  if (!model || !line) return undefined;
  const scope = scopeOf(model, snapshot.library);
  const entry = pathAt(snapshot.tree, offset).find((l) => l.kind === 'entry');
  const owner = entry && model.things.find((t) => t.line === entry);
  return wordsOn(line, scope, owner).find(({ name }) => touches(name, offset));
}

/** Every place of the library where the same word is meant, file by file. */
export function placesOf(snapshot: Snapshot, at: WordPlace): Map<string, WordPlace[]> {
  const { shelf } = snapshot;
  const found = new Map<string, WordPlace[]>();
  const { word } = at;
  const family = word.of === 'option' ? familyOf(shelf, snapshot.path, word.option, at.vehicle) : undefined;
  for (const path of shelf.paths()) {
    if (!snapshot.file(path)?.text.includes(word.text)) continue;
    const model = shelf.library.model(path);
    if (!model) continue;
    const places = wordsIn(model, shelf).filter(
      (place) =>
        isSame(place.word, word) &&
        (!family || (place.vehicle ? family.vehicles.has(place.vehicle.id) : family.files.has(path))),
    );
    if (places.length > 0) found.set(path, places);
  }
  return found;
}

function isSame(a: DeclaredWord, b: DeclaredWord): boolean {
  if (a.text !== b.text) return false;
  if (a.of === 'option') return b.of === 'option' && a.option === b.option && a.isValue === b.isValue;
  return b.of === 'thing' && a.thing.id === b.thing.id;
}

/** Files and vehicles that share an option: an option of two vehicles is one where a procedure applies to both. */
function familyOf(
  shelf: Shelf,
  path: string,
  option: string,
  vehicle: Thing | undefined,
): { files: Set<string>; vehicles: Set<string> } {
  const files = new Set(vehicle ? [] : [path]);
  const vehicles = new Set(vehicle ? [vehicle.id] : []);
  const groups = shelf.paths().flatMap((at) => {
    const model = shelf.library.model(at);
    return model ? [sharersOf(model, shelf, option)] : [];
  });
  for (let before = -1; before !== files.size + vehicles.size; ) {
    before = files.size + vehicles.size;
    for (const group of groups) {
      // Vehicles of one procedure have no more than the word in common unless a line asks for the option.
      if (group.files.length === 0) continue;
      if (!group.files.some((f) => files.has(f)) && !group.vehicles.some((v) => vehicles.has(v))) continue;
      for (const file of group.files) files.add(file);
      for (const id of group.vehicles) vehicles.add(id);
    }
  }
  return { files, vehicles };
}

/** The files of a job that ask for an option, and its vehicles that have it. */
function sharersOf(model: FileModel, shelf: Shelf, option: string): { files: string[]; vehicles: string[] } {
  const scope = scopeOf(model, shelf.library);
  const applied = model.applies.flatMap((l) => (l.vehicle ? [scope.resolve(l.vehicle.text)] : []));
  const vehicles = (applied.length > 0 ? applied : [...scope.names.values()]).filter(
    (t): t is Thing => t?.kind === 'vehicle' && optionsOf(t).some((o) => o[0]?.text === option),
  );
  const asks = (file: FileModel): boolean =>
    everyLine(file.lines).some((l) => guardTerms(l).some((t) => t.option.text === option));
  return {
    files: scope.files.filter(asks).map((f) => f.path),
    vehicles: vehicles.map((v) => v.id),
  };
}

const optionsOf = (vehicle: Thing): (readonly Name[])[] =>
  (vehicle.clauses.get('option') ?? []).map(({ clause }) => clause.words);

function guardTerms(line: Line) {
  return 'guard' in line ? (line.guard?.terms ?? []) : [];
}

function wordsIn(model: FileModel, shelf: Shelf): WordPlace[] {
  const scope = scopeOf(model, shelf.library);
  const owners = new Map<Line, Thing>();
  for (const thing of model.things)
    if (thing.line) for (const line of everyLine(thing.line.children)) owners.set(line, thing);
  return everyLine(model.lines).flatMap((line) => wordsOn(line, scope, owners.get(line)));
}

/** The words on one line. `owner` is the thing in whose entry it stands. */
function wordsOn(line: Line, scope: Scope, owner: Thing | undefined): WordPlace[] {
  const found: WordPlace[] = [];
  const value = (thing: Thing | undefined, name: Name | undefined, declares = false): void => {
    if (thing?.values.some((v) => v.text === name?.text) && name)
      found.push({ word: { of: 'thing', thing, text: name.text }, name, declares });
  };
  const items = (list: readonly Item[]): void => {
    for (const item of list) value(scope.resolve(item.name.text), item.value);
  };
  const event = (pattern: EventPattern | undefined): void => {
    const [target] = pattern?.target?.form === 'names' ? pattern.target.names : [];
    if (target) value(scope.resolve(target.text), pattern?.value);
    for (const clause of pattern?.clauses ?? []) items(clause.items);
  };
  const clauses = (list: readonly Clause[]): void => {
    for (const clause of list) {
      items(clause.items);
      event(clause.event);
    }
  };

  for (const term of guardTerms(line)) {
    const option = term.option.text;
    if (OWN_AXES.has(option)) continue;
    const word = { of: 'option', option } as const;
    found.push({ word: { ...word, text: option, isValue: false }, name: term.option, declares: false });
    for (const name of term.values)
      found.push({ word: { ...word, text: name.text, isValue: true }, name, declares: false });
  }
  switch (line.kind) {
    case 'values':
      for (const name of line.values) value(owner, name, true);
      break;
    case 'clauses':
      clauses(line.clauses);
      for (const { word: clause, words } of line.clauses) {
        if (clause === 'positions') for (const name of words) value(owner, name, true);
        if (clause === 'option' && owner?.kind === 'vehicle') found.push(...declaredOption(owner, words));
      }
      break;
    case 'statement':
      items(line.items);
      clauses(line.clauses);
      for (const name of movedTo(line.verb.text, line.clauses))
        value(scope.resolve(line.items[0]?.name.text ?? ''), name);
      break;
    case 'prerequisite':
      value(scope.resolve(line.name.text), line.value);
      clauses(line.clauses);
      break;
    case 'rule':
      for (const clause of line.clauses) {
        if ('pattern' in clause) event(clause.pattern);
        if (clause.word === 'needs' && clause.clause) clauses([clause.clause]);
        if (clause.word === 'while' && clause.state?.target.form === 'names')
          for (const name of clause.state.target.names) value(scope.resolve(name.text), clause.state.state);
      }
      break;
    default:
      break;
  }
  return found.sort((a, b) => a.name.start - b.name.start);
}

/** Ways in which vehicles differ that no option declares. */
const OWN_AXES: ReadonlySet<string> = new Set(['side', 'year', 'vehicle']);

function declaredOption(vehicle: Thing, [option, ...values]: readonly Name[]): WordPlace[] {
  if (!option) return [];
  const of = { of: 'option', option: option.text } as const;
  return [
    { word: { ...of, text: option.text, isValue: false }, name: option, declares: true, vehicle },
    ...values.map((name) => ({
      word: { ...of, text: name.text, isValue: true },
      name,
      declares: true,
      vehicle,
    })),
  ];
}

/** Positions that a part is moved to stand where names do. */
function movedTo(verb: string, clauses: readonly Clause[]): Name[] {
  if (!VERB_BY_WORD.get(verb)?.on.part?.makes.includes('moved')) return [];
  return clauses.filter((c) => c.word === 'to').flatMap((c) => c.items.map((item) => item.name));
}
