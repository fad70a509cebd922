// N205: clauses in entries of a kind that has none such.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { clauseNotForKind } from '../diagnostics/names.js';
import type { FileModel, Thing } from '../names/model.js';
import type { Clause } from '../syntax/tree.js';
import { memory } from '../text/once.js';
import { ENTRY_CLAUSE_BY_WORD, ENTRY_CLAUSES } from '../vocabulary/clauses.js';
import type { ThingKind } from '../vocabulary/kinds.js';
import type { Check } from './check.js';
import { manyOf, oneOf } from './kind-words.js';

export const entryClauses: Check = ({ job: { file } }) =>
  file.things.flatMap((thing) => judged(thing, () => clauseFindings(file, thing)));

/** An entry's clauses are judged by the entry alone. */
const judged = memory<Thing, readonly Finding[]>();

const clauseFindings = (file: FileModel, thing: Thing): Finding[] =>
  [...thing.clauses].flatMap(([word, list]) => {
    const kinds = kindsWith(word);
    if (kinds.includes(thing.kind)) return [];
    return list.flatMap(({ clause, line }) => {
      if (line.broken) return [];
      const bare = word === 'bare';
      const span = bare
        ? { start: clause.start, end: clause.end }
        : { start: clause.wordSpan.start, end: clause.wordSpan.end };
      const fixes = bare ? wordFixes(file.path, thing, clause) : [];
      return [report(file.path, thing, clause, kinds, span, fixes)];
    });
  });

function report(
  file: string,
  thing: Thing,
  clauseOf: Clause,
  kinds: readonly ThingKind[],
  span: { start: number; end: number },
  fixes: readonly Fix[],
): Finding {
  const { word } = clauseOf;
  const clause = word === 'bare' ? 'figure of its own' : word === 'of' ? 'number and thread' : `\`${word}\``;
  return finding(
    clauseNotForKind,
    { file, span, fixes },
    {
      clause,
      name: thing.name,
      kind: oneOf(thing.kind),
      takes: word === 'bare' ? '' : manyOf(kinds),
      instead: lockOf(thing, clauseOf),
    },
  );
}

/** The pin of a castle nut is named at the part, beside the nut. */
function lockOf({ kind, name }: Thing, { word, items }: Clause): string | undefined {
  if (kind !== 'fastener' || word !== 'held by' || items.length === 0) return undefined;
  const names = [name, ...items.map((item) => item.name.text)].join(', ');
  return `what locks it is named at the part that it holds: \`held by ${names}\``;
}

/** A figure that stands alone belongs to a limit, a number with a thread to fasteners. */
function kindsWith(word: string): readonly ThingKind[] {
  if (word === 'bare') return ['limit'];
  if (word === 'of') return ['fastener'];
  return ENTRY_CLAUSE_BY_WORD.get(word)?.on ?? [];
}

/** The clause words of this kind that take such a quantity, or a number alone: `torque 115 N·m` for `115 N·m`, `count 2`. */
function wordFixes(file: string, thing: Thing, clause: Clause): Fix[] {
  const written = clause.spec?.stages[0]?.measure;
  const unit = written?.amounts[0]?.unit;
  // A unit of several readings is one of them behind the word: `28 lb` is a mass behind `mass`.
  const kinds = new Set(
    written?.measure
      ? [written.measure.unit.kind]
      : (unit?.readings.map((reading) => reading.unit.kind) ?? []),
  );
  const fitting = ENTRY_CLAUSES.filter(
    ({ on, unitless, quantity }) =>
      on.includes(thing.kind) &&
      (unit === undefined ? unitless === true : quantity?.some((kind) => kinds.has(kind))),
  );
  // A bare length behind a thread is nearly always the spanner's.
  const words = [
    ...fitting.filter((def) => def.word === 'hex'),
    ...fitting.filter((def) => def.word !== 'hex'),
  ].slice(0, 4);
  return words.map((def) => ({
    title: `Write \`${def.word}\` before it`,
    edits: [{ file, span: { start: clause.start, end: clause.start }, text: `${def.word} ` }],
  }));
}
