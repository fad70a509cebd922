// Writers' prose and titles in the language of the print, with their references to figures filled in.
import {
  type Condition,
  clausesOf,
  type Language,
  NEVER,
  type PhraseId,
  phraseText,
  resolve,
  type SpecNode,
  type Thing,
} from '@baywright/language';
import type { Prose } from '../inline.js';
import { text } from '../inline.js';
import { readProse } from '../prose.js';
import { quantityInline } from './measures.js';
import { type Print, translated } from './print.js';
import { variantWords } from './variant-words.js';

/** What a technician reads after a colon. */
export function written(print: Print, file: string, source: string): Prose {
  const plain = source.trim().replace(/\s*\n\s*/g, ' ');
  const shown = translated(print, file, plain);
  const prose = readProse(shown, (reference) => resolved(print, reference));
  const language = foreignTo(print, file, plain);
  // A mark tells the reader that the language changed because a translation is missing, not by mistake.
  return language !== undefined && prose.length > 0
    ? [{ kind: 'foreign', language, children: prose }, text(` [${language}]`)]
    : prose;
}

/** The language that a text is printed in for want of a translation; undefined where it is that of the print. */
export function foreignTo(print: Print, file: string, source: string): Language | undefined {
  return print.untranslated.get(file)?.has(source.trim())
    ? (print.shelf.settings.languages[0] ?? 'en')
    : undefined;
}

/** `{hub-bolt torque}`, `{hub-bolt torque 2}`, `{hub-bolt}`. Undefined when it names nothing. */
function resolved(print: Print, reference: string): Prose | undefined {
  const [name = '', ...rest] = reference.split(/\s+/);
  const thing = resolve(print.job.scopes, name);
  if (!thing) return undefined;
  const stage = Number(rest.at(-1));
  const word = (Number.isInteger(stage) ? rest.slice(0, -1) : rest).join(' ');
  if (word === '' && thing.kind !== 'limit') return [text(titleOf(print, thing))];
  const { diagrams } = print.job.universe;
  const clauses = (
    word === '' ? ['bare', 'at least', 'at most'].flatMap((w) => clausesOf(thing, w)) : clausesOf(thing, word)
  ).filter(({ guard }) => diagrams.and(print.job.where(guard), print.when) !== NEVER);
  const clause = clauses.find(({ guard }) => guard !== undefined) ?? clauses[0];
  if (!clause) return undefined;
  if (clause.clause.spec)
    return specProse(print, clause.clause.spec, Number.isInteger(stage) ? stage : undefined);
  return clause.clause.raw ? [text(clause.clause.raw.text)] : undefined;
}

/** Stages one after the other: `60 N·m then 245 N·m`. */
function specProse(print: Print, spec: SpecNode, only?: number): Prose {
  const stages = only === undefined ? spec.stages : spec.stages.slice(only - 1, only);
  return stages.flatMap(({ back, measure }, i): Prose => {
    const joint = i === 0 ? '' : ` ${phraseText('stage-then', print.language)} `;
    const turned = back ? `${phraseText('stage-back', print.language)} ` : '';
    const figure = measure.measure ? quantityInline(measure.measure, print) : text('?');
    return joint + turned === '' ? [figure] : [text(joint + turned), figure];
  });
}

/** The title of a thing in the language of the print, as it stands in a list. */
export function titleOf(print: Print, thing: Thing): string {
  if (thing.kind !== 'machine') return translated(print, thing.file, thing.title);
  const own = MACHINE_TITLES[thing.name];
  return own === undefined ? thing.title : phraseText(own, print.language);
}

/** What every vehicle has without being declared. */
const MACHINE_TITLES: Readonly<Record<string, PhraseId>> = {
  vehicle: 'thing-vehicle',
  suspension: 'thing-suspension',
  engine: 'thing-engine',
  odometer: 'thing-odometer',
  codes: 'thing-codes',
};

/** The part number that holds on the combinations, `?` for one that is open, undefined where none is written. */
export function partNumber(print: Print, thing: Thing, within: Condition): string | undefined {
  const { diagrams } = print.job.universe;
  const all = clausesOf(thing, 'number').filter(
    ({ guard }) => diagrams.and(print.job.where(guard), within) !== NEVER,
  );
  const texts = all.flatMap(({ clause, guard }) => {
    // `PF 4416` is one word: it is looked for in a rack.
    const number = clause.raw?.hole ? '?' : (clause.raw?.text.replaceAll(' ', '\u00a0') ?? '?');
    const variant =
      all.length === 1
        ? undefined
        : variantWords(print, diagrams.and(print.job.where(guard), within), within);
    return [variant === undefined ? number : `${number} (${variant})`];
  });
  return texts.length > 0 ? texts.join(', ') : undefined;
}
