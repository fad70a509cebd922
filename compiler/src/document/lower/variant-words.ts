// Options, their values and those of conditions in the language of the print: `ratio high`, `applied`.
import { type Condition, type Job, phrase, phraseText, type Thing } from '@baywright/language';
import { type Place, type Print, translated } from './print.js';

type Axis = Job['universe']['axes'][number];

/**
 * What sets some combinations apart among those of a place, in words; undefined where they are all of them. Ways in
 * which the place differs from other prints are not said again.
 */
export function variantWords(print: Print, when: Condition, within: Condition): string | undefined {
  const { universe } = print.job;
  const { diagrams } = universe;
  if (diagrams.implies(within, when)) return undefined;
  let said = diagrams.and(when, within);
  for (const { variable } of universe.axes) {
    const without = diagrams.forget(said, variable.index);
    if (diagrams.and(without, within) === diagrams.and(said, within)) said = without;
  }
  const [and, or] = [phrase('and', print.language), phrase('or', print.language)];
  return universe.words(said, { and, or, term: (axis, values) => termText(print, axis, values, or) });
}

/** The vehicles that a line is for, where the print is for others as well. */
export function forSome(
  print: Print,
  { when, side }: Pick<Place, 'when' | 'side'>,
): { readonly variant?: string } {
  const variant = variantWords(print, when, side?.when ?? print.when);
  return variant === undefined ? {} : { variant };
}

function termText(print: Print, axis: Axis, values: readonly string[], or: string): string {
  if (axis.kind === 'option') return optionText(print, axis.name, values);
  const words = values.map((value) => axisValue(print, axis, value)).join(or);
  if (axis.kind === 'side' && print.language !== 'en')
    return phraseText('on-side', print.language, { side: words });
  return `${axis.kind === 'year' ? phrase('model-year', print.language) : axis.name} ${words}`;
}

function axisValue(print: Print, { kind }: Axis, value: string): string {
  if (kind === 'side') return sideWord(print, value);
  if (kind !== 'year') return value;
  const [from, to] = value.split(' to ');
  return from === undefined || to === undefined ? value : phraseText('from-to', print.language, { from, to });
}

/** `ratio high`, by the translations of the catalogue that declares the option. */
export function optionText(print: Print, name: string, values: readonly string[]): string {
  const files = print.analysis.model.applies.flatMap(({ vehicle }) => {
    const thing = vehicle ? print.job.scope.resolve(vehicle.text) : undefined;
    return thing ? [thing.file] : [];
  });
  const file = files[0] ?? print.analysis.path;
  const said = values.map((value) => translated(print, file, value)).join(phrase('or', print.language));
  return `${translated(print, file, name)} ${said}`;
}

/** A value of a condition: `applied`. */
export function valueText(print: Print, condition: Thing | undefined, value: string): string {
  return condition ? translated(print, condition.file, value) : value;
}

export function sideWord(print: Print, word: string | undefined): string {
  if (word === 'left') return phrase('side-left', print.language);
  if (word === 'right') return phrase('side-right', print.language);
  return word ?? '';
}
