// What a procedure is for: vehicles by their titles, with model years and the options that limit it.
import { type AppliesLine, clausesOf, numberOf, phraseText, type Thing, yearsOf } from '@baywright/language';
import type { Print } from './print.js';
import { titleOf } from './texts.js';
import { optionText } from './variant-words.js';

/** `2018 to 2025`: the years written, up to the last of the vehicle where only the first is. */
function yearsText({ language }: Print, line: AppliesLine, vehicle: Thing | undefined): string[] {
  if (line.from?.value === undefined) return [];
  const last = line.to?.value === undefined ? undefined : numberOf(line.to.value);
  const from = String(numberOf(line.from.value));
  const to = String(last ?? (vehicle && yearsOf(clausesOf(vehicle, 'years')))?.to ?? '');
  if (to === '') return [phraseText('from-on', language, { from })];
  return [to === from ? from : phraseText('from-to', language, { from, to })];
}

/** The identification number of the one vehicle that a procedure is written for. A range is for the parts counter. */
function vinText({ language }: Print, vehicle: Thing | undefined): string[] {
  const [only, ...others] = vehicle ? clausesOf(vehicle, 'vin') : [];
  const number = only?.clause.raw?.text ?? '';
  return number === '' || others.length > 0 || /\s/.test(number)
    ? []
    : [phraseText('one-vin', language, { number })];
}

/** `Maristow 300 delivery van, 2018 to 2025`. */
export function appliesText(print: Print): string {
  const { model } = print.analysis;
  const said = model.applies.map((line) => {
    const vehicle = line.vehicle ? print.job.scope.resolve(line.vehicle.text) : undefined;
    const name = vehicle ? titleOf(print, vehicle) : (line.vehicle?.text ?? '?');
    const guard =
      line.guard?.terms.map((term) =>
        optionText(
          print,
          term.option.text,
          term.values.map((value) => value.text),
        ).trim(),
      ) ?? [];
    return [name, ...vinText(print, vehicle), ...yearsText(print, line, vehicle), ...guard].join(', ');
  });
  return said.join('; ');
}
