// What a line takes along for the first page and the pull sheet: tools, supplies, fluids, things placed.
import { type BoundStatement, isEachSide } from '@baywright/language';
import type { Place } from './print.js';
import { note } from './uses.js';
import { variantWords } from './variant-words.js';
import { comingRow, type Walk } from './walk.js';

export function noteAids(walk: Walk, statement: BoundStatement, place: Place): void {
  const { print } = walk;
  const { uses } = print;
  const at = comingRow(walk);
  const { word } = statement.verb;
  // What sets sides apart is no variant: both are worked, and what each takes is added.
  const variant = variantWords(print, place.when, place.side?.when ?? print.when);
  const touchesSides = statement.objects.some(({ thing }) => thing && isEachSide(thing));
  const sides = place.side
    ? [place.side.word]
    : touchesSides
      ? print.sides.map((side) => side.word)
      : [undefined];
  const amount = statement.clause('bare')?.spec?.stages[0]?.measure.measure;
  for (const item of statement.clauses.flatMap((clause) => statement.named(clause.word))) {
    const { thing } = item;
    if (thing?.kind === 'tool') note(uses.tools, thing, at);
    else if (thing?.kind === 'supply')
      for (const side of sides) uses.supplies.push({ ...at, thing, side, amount: undefined, variant });
  }
  for (const { thing } of statement.objects) {
    if (!thing) continue;
    const poured = thing.kind === 'fluid' ? (statement.verb.on.fluid?.makes ?? []) : [];
    const isTopUp = poured.includes('topped');
    if (thing.kind === 'supply')
      for (const side of sides) uses.supplies.push({ ...at, thing, side, amount, variant });
    else if (thing.kind === 'tool' && word !== 'wear') note(uses.tools, thing, at);
    else if (thing.kind === 'temporary' && statement.verb.on.temporary?.makes.includes('placed'))
      note(uses.placed, thing, at);
    else if (poured.includes('drained'))
      for (const side of sides) uses.drained.push({ ...at, thing, side, amount, variant });
    else if (isTopUp || poured.includes('filled'))
      for (const side of sides) uses.fluids.push({ ...at, thing, side, amount, variant, isTopUp });
  }
}
