// The steps of a procedure in order, with their rows: those of its own phases and of the operations it performs.
import {
  type Language,
  type Line,
  listPieces,
  NEVER,
  phrase,
  phraseText,
  SECTION_BY_WORD,
  textOf,
} from '@baywright/language';
import type { Block, BlockOf } from '../blocks.js';
import { type Prose, plain, text } from '../inline.js';
import { lowerLines, performed } from './lines.js';
import { smallFirst } from './names.js';
import { type Place, type Print, type SidePrint, sourceOf, translated } from './print.js';
import { atSide, touches } from './sides.js';
import { foreignTo } from './texts.js';
import { sideWord, variantWords } from './variant-words.js';
import { openNow, railNow, thingName, type Walk } from './walk.js';

/** One step to be, with the lines it holds. */
interface Unit {
  readonly title: Title;
  readonly phase: string;
  readonly line: Line | undefined;
  readonly lines: readonly Line[];
  readonly place: Place;
  readonly note: string | undefined;
}

interface Title {
  readonly text: string;
  /** Where it has no translation. */
  readonly language: Language | undefined;
}

/** A title as written, in the language of the print. */
const titled = (print: Print, file: string, source: string): Title => ({
  text: translated(print, file, source),
  language: foreignTo(print, file, source),
});

export function lowerSteps(walk: Walk): BlockOf<'step'>[] {
  const { print } = walk;
  const place: Place = { scope: print.job.scope, when: print.when, side: undefined, maybe: false };
  const units = print.job.file.work.flatMap((section) => {
    const phase = SECTION_BY_WORD.get(section.word)?.heading[print.language] ?? section.word;
    return unitsOf(walk, section.children, place, phase, { text: phase, language: undefined });
  });
  const steps: BlockOf<'step'>[] = [];
  for (const { unit, side } of inOrder(print, units)) {
    const step = lowerStep(walk, unit, side);
    if (step) steps.push(step);
  }
  return withTallies(steps);
}

/** Steps of a block; lines outside any step make one of their own, or open the next when there is nothing to tick. */
function unitsOf(
  walk: Walk,
  lines: readonly Line[],
  place: Place,
  phase: string,
  title: Title,
  note?: string,
): Unit[] {
  const { print } = walk;
  const units: Unit[] = [];
  let loose: Line[] = [];
  const close = (): void => {
    if (loose.length > 0) units.push({ title, phase, line: loose[0], lines: loose, place, note });
    loose = [];
  };
  for (const line of lines) {
    if (line.kind === 'step') {
      const lead = loose.some((one) => one.kind === 'statement') ? [] : loose;
      if (lead.length > 0) loose = [];
      close();
      const own = titled(print, place.scope.file.path, line.prose?.text.trim() ?? '');
      units.push({
        title: own.text === '' ? title : own,
        phase,
        line,
        lines: [...lead, ...line.children],
        place,
        note: units.length === 0 ? note : undefined,
      });
    } else if (line.kind === 'operation') {
      close();
      units.push(
        ...unitsOf(
          walk,
          line.children,
          place,
          phase,
          line.prose ? titled(print, place.scope.file.path, line.prose.text.trim()) : title,
        ),
      );
    } else if (line.kind === 'perform') {
      close();
      const found = performed(walk, line, place);
      if (!found) continue;
      const own = titled(print, found.place.scope.file.path, found.title);
      const from =
        found.number === undefined
          ? undefined
          : phraseText('perform', print.language, { number: found.number, title: own.text });
      units.push(...unitsOf(walk, found.lines, found.place, phase, own, from));
    } else if (
      line.kind === 'when' &&
      line.children.some((child) => child.kind === 'step' || child.kind === 'perform')
    ) {
      close();
      const when = print.job.universe.diagrams.and(place.when, print.job.where(line.guard));
      if (when !== NEVER) units.push(...unitsOf(walk, line.children, { ...place, when }, phase, title));
    } else loose.push(line);
  }
  close();
  return units;
}

/** Steps that touch one side only, in a row, are done for one side and then for the other. */
function inOrder(print: Print, units: readonly Unit[]): { unit: Unit; side: SidePrint | undefined }[] {
  const [only] = print.sides;
  if (print.sides.length === 1) return units.map((unit) => ({ unit, side: only }));
  const ordered: { unit: Unit; side: SidePrint | undefined }[] = [];
  let run: Unit[] = [];
  const close = (): void => {
    const isPaired = run.some((unit) => touches(unit.lines, print, unit.place.scope) === 'side');
    for (const side of isPaired ? print.sides : [undefined])
      ordered.push(...run.map((unit) => ({ unit, side })));
    run = [];
  };
  for (const unit of units) {
    const touch = touches(unit.lines, print, unit.place.scope);
    if (touch === 'once' || touch === 'both') {
      close();
      ordered.push({ unit, side: undefined });
    } else run.push(unit);
  }
  close();
  return ordered;
}

function lowerStep(walk: Walk, unit: Unit, side: SidePrint | undefined): BlockOf<'step'> | undefined {
  const { print } = walk;
  const place = side ? atSide(print, unit.place, side) : unit.place;
  if (place.when === NEVER) return undefined;
  walk.step++;
  walk.rows = 0;
  const before = railNow(walk);
  const items: Block[] = [];
  if (unit.note !== undefined) items.push({ kind: 'note', body: [text(unit.note)], rail: before });
  lowerLines(walk, unit.lines, place, items);
  if (items.length === 0) {
    walk.step--;
    return undefined;
  }
  const variant = variantWords(print, place.when, side ? side.when : print.when);
  const number = String(walk.step);
  const source = unit.line ? sourceOf(print, unit.place.scope.file.path, unit.line.start) : undefined;
  const suffix = side && print.sides.length > 1 ? `, ${sideWord(print, side.word)}` : '';
  const within: Block[] =
    variant === undefined
      ? items
      : [
          {
            kind: 'branch',
            heading: [text(`${phraseText('only-with', print.language, { variant })}:`)],
            items,
            rail: railNow(walk),
          },
        ];
  return {
    kind: 'step',
    id: `s${number}`,
    number,
    title: `${unit.title.text}${suffix}`,
    ...(unit.title.language === undefined ? {} : { titleLanguage: unit.title.language }),
    phase: unit.phase,
    before,
    items: [...within, ...tallyOf(walk)],
    ...(source ? { source } : {}),
  };
}

/** `Off now, 5: …`: what the next person finds. Kept only where a phase ends. */
function tallyOf(walk: Walk): BlockOf<'tally'>[] {
  const { print } = walk;
  const open = [...openNow(walk).values()];
  const off = open.filter(({ open: state }) => state !== 'loose');
  const loose = open.filter(({ open: state }) => state === 'loose');
  if (off.length === 0) return [];
  const list = (some: typeof open): string =>
    textOf(
      listPieces(
        some.map(({ thing, side, open: state }) => [
          {
            text: listed(
              print,
              thingName(print, thing, side, state === 'hung' ? phrase('hung', print.language) : ''),
            ),
          },
        ]),
        print.language,
      ),
    );
  const said = (id: 'off-now' | 'to-torque', some: typeof open): Prose => {
    const [head = '', things = ''] = phraseText(id, print.language, {
      count: some.length,
      things: `\u0000${list(some)}`,
    }).split('\u0000');
    return [{ kind: 'strong', children: [text(head.trimEnd())] }, text(` ${things}. `)];
  };
  return [
    {
      kind: 'tally',
      body: [...said('off-now', off), ...(loose.length > 0 ? said('to-torque', loose) : [])],
      rail: railNow(walk),
    },
  ];
}

const listed = (print: Print, words: string): string => (print.language === 'de' ? words : smallFirst(words));

/** Tallies stay at the last step of a phase, where a job is handed over, unless nothing changed since the last one. */
function withTallies(steps: readonly BlockOf<'step'>[]): BlockOf<'step'>[] {
  let told = '';
  return steps.map((step, i) => {
    const next = steps[i + 1];
    const words = step.items.flatMap((item) => (item.kind === 'tally' ? [plain(item.body)] : [])).join('');
    const isLast = next === undefined || next.phase !== step.phase;
    if (isLast && words !== told) {
      told = words;
      return step;
    }
    return { ...step, items: step.items.filter(({ kind }) => kind !== 'tally') };
  });
}
