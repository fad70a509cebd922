// What goes in where a line fills and says no figure of its own: that of the fluid's entry, with its mark and its source.
import {
  type BoundItem,
  type BoundStatement,
  type Clause,
  clausesOf,
  type Measure,
  type Name,
  type Thing,
  type ThingClause,
} from '@baywright/language';
import { type Prose, text } from '../inline.js';
import { quantityInline } from './measures.js';
import { capitalFirst } from './names.js';
import type { Place, Print } from './print.js';
import { titleOf } from './texts.js';
import { notesOfSources } from './torque-box.js';
import { holding } from './torques.js';

/** How much goes in, and the mark that says full. */
export interface Poured {
  readonly measure: Measure;
  readonly mark: readonly Name[];
}

export interface PouredHere {
  /** For the sentence, where one figure holds for all that is printed. */
  readonly said?: Poured;
  /** A figure for each vehicle or fluid, and where the figures come from. */
  readonly notes: readonly Prose[];
}

/** The lines of a fluid's entry that say how much goes in: by volume, or a charge by mass. */
export function amountLines(fluid: Thing): readonly ThingClause[] {
  const fill = clausesOf(fluid, 'fill');
  return fill.length > 0 ? fill : clausesOf(fluid, 'mass');
}

/**
 * The figures of a line that fills. A line with a figure prints that one; one with a mark alone fills what lacks, and
 * nobody knows how much that is.
 */
export function pouredAt(
  print: Print,
  statement: BoundStatement,
  objects: readonly BoundItem[],
  place: Place,
): PouredHere {
  const fills = statement.verb.on.fluid?.makes.includes('filled') ?? false;
  if (!fills || statement.clause('bare') || statement.clause('until level at')) return { notes: [] };
  const all = objects.flatMap(({ thing }) =>
    thing?.kind === 'fluid'
      ? holding(print, place.when, amountLines(thing)).flatMap(({ line, variant }) => {
          const measure = line.clause.spec?.stages[0]?.measure.measure;
          return measure ? [{ thing, variant, measure, clauses: line.line.clauses }] : [];
        })
      : [],
  );
  const pers = all.flatMap(({ clauses }) => word(clauses, 'per')?.raw?.text ?? []);
  for (const per of pers) print.uses.sources.add(per);
  const sources = notesOfSources(pers, print.language);
  const [only] = all;
  if (only && all.length === 1 && only.variant === undefined && objects.length === 1)
    return { said: { measure: only.measure, mark: markOf(only.thing, only.clauses) }, notes: sources };
  const notes = all.map(({ thing, variant, measure }): Prose => {
    const what = [...(objects.length > 1 ? [titleOf(print, thing)] : []), ...(variant ? [variant] : [])];
    return [text(`${capitalFirst(what.join(', '))}: `), quantityInline(measure, print)];
  });
  return { notes: [...notes, ...sources] };
}

const word = (clauses: readonly Clause[], wanted: string): Clause | undefined =>
  clauses.find((clause) => clause.word === wanted);

/** The mark stands behind the figure, or on a line of its own. */
function markOf(fluid: Thing, clauses: readonly Clause[]): readonly Name[] {
  const mark = word(clauses, 'until level at') ?? clausesOf(fluid, 'until level at')[0]?.clause;
  return mark?.items.map(({ name }) => name) ?? [];
}
