// The first page and the tables behind the steps: what it fits, times, dangers, needs, sources, revisions, questions.
import { jobTime, phrase, phraseText, writtenMinutes } from '@baywright/language';
import type { Block, BlockOf } from '../blocks.js';
import { type Prose, text } from '../inline.js';
import { appliesText } from './applies.js';
import { dangerRows, dangersTitle } from './dangers.js';
import { identityOf, openQuestions, sideText, signedText } from './identity.js';
import { minutesText, quantityInline } from './measures.js';
import { capitalFirst } from './names.js';
import { needGroups } from './needs.js';
import { type Print, sourceOf } from './print.js';
import { titleOf, written } from './texts.js';
import { holding } from './torques.js';
import { optionText, sideWord, valueText } from './variant-words.js';

export function frontBlocks(print: Print): Block[] {
  const { language } = print;
  const groups = needGroups(print);
  const dangers = dangerRows(print);
  const title = phrase('you-will-need', language);
  return [
    masthead(print),
    ...(dangers.length > 0
      ? [{ kind: 'dangers', title: dangersTitle(print, dangers.length), rows: dangers } as const]
      : []),
    ...(groups.length > 0
      ? [{ kind: 'needs', title, layout: 'list', groups: groups.map(amountsInline) } as const]
      : []),
    ...(isLong(print, groups, dangers) ? [] : legend(print)),
  ];
}

/** How to read the pages, and what comes before them. The standing statement is at the foot of every page as well. */
function legend(print: Print): Block[] {
  return [
    { kind: 'key', since: [] },
    { kind: 'statement', body: [text(phrase('statement-long', print.language))] },
  ];
}

/** Lines of the first page beyond which the legend moves behind the steps, so that one page is enough. Measured. */
const FIRST_PAGE_LINES = 18;

function isLong(print: Print, groups: ReturnType<typeof needGroups>, dangers: readonly unknown[]): boolean {
  const rows = groups.reduce((sum, group) => sum + group.rows.length, 0);
  const title = print.analysis.model.title.length > 34 ? 1.5 : 0;
  const before = 0.7 * beforeStart(print).length;
  return rows + 1.5 * dangers.length + before + title > FIRST_PAGE_LINES;
}

/** The first page has no column for amounts and numbers: they follow the name, and a count of pieces goes before it. */
function amountsInline({
  title,
  rows,
}: ReturnType<typeof needGroups>[number]): ReturnType<typeof needGroups>[number] {
  return {
    title,
    rows: rows.map(({ number, amount, pieces, ...row }) => ({
      ...row,
      what: [
        ...(pieces === undefined ? [] : [text(`${pieces}\u00a0×\u00a0`)]),
        ...row.what,
        ...(number === undefined ? [] : [text(`, ${number}`)]),
        ...(amount ? [text(', '), ...amount] : []),
      ],
    })),
  };
}

function masthead(print: Print): BlockOf<'masthead'> {
  const { language } = print;
  const identity = identityOf(print);
  const side = sideText(print);
  const others = otherPrints(print);
  const plan = planOf(print);
  const [first, ...options] =
    side === undefined ? identity.options.map(capitalFirst) : [side, ...identity.options];
  const code = [
    identity.number,
    phraseText('revision', language, { number: identity.revision }),
    side,
    ...identity.options,
  ];
  return {
    kind: 'masthead',
    appliesTo: [text(appliesText(print))],
    times: times(print),
    before: beforeStart(print),
    ...(first === undefined
      ? {}
      : { printedFor: { title: first, options, ...(others === '' ? {} : { others: [text(others)] }) } }),
    ...(plan ? { plan } : {}),
    code: code.filter((part) => part !== undefined).join(', '),
  };
}

/** What must hold or be arranged before the job starts: what the procedure says, and when a second person is needed. */
function beforeStart(print: Print): Prose[] {
  const { model } = print.analysis;
  const said = model.prerequisites.flatMap((line): Prose[] => {
    if (line.kind === 'text') return line.prose ? [written(print, print.analysis.path, line.prose.text)] : [];
    const thing = print.job.scope.resolve(line.name.text);
    if (thing?.kind === 'tool') return [];
    const name = thing ? titleOf(print, thing) : line.name.text;
    const value = line.value
      ? `${phrase('colon', print.language)} ${valueText(print, thing, line.value.text)}`
      : '';
    const figures = line.clauses.flatMap(({ spec }): Prose => {
      const measure = spec?.stages[0]?.measure.measure;
      return measure ? [text(', '), quantityInline(measure, print)] : [];
    });
    return [[text(`${capitalFirst(name)}${value}`), ...figures]];
  });
  const { holds } = print.uses;
  if (holds.length === 0) return said;
  const lines = holds.map(({ number }) => number).join(', ');
  return [...said, [text(phraseText('second-person-at', print.language, { lines }))]];
}

function times(print: Print): BlockOf<'masthead'>['times'] {
  const { language } = print;
  const time = print.run ? jobTime(print.run, print.when, print.sides.length) : undefined;
  const labour = labourTimes(print);
  const crew = print.job.file.lines.find((one) => one.kind === 'crew');
  const count = crew?.kind === 'crew' ? crew.count?.value : undefined;
  return [
    ...(labour.length > 0
      ? labour
      : time
        ? [
            {
              label: phrase('hands-on', language),
              value: phraseText('about', language, { value: minutesText(time.handsOnMin) }),
            },
          ]
        : []),
    ...(time
      ? [
          {
            label: phrase('waiting', language),
            value: time.waitingMin > 0 ? minutesText(time.waitingMin) : phrase('none', language),
          },
        ]
      : []),
    ...(count === undefined ? [] : [{ label: phrase('crew', language), value: String(count.n / count.d) }]),
  ];
}

/** Declared labour on the printed combinations, an entry for each that has its own; empty where none is declared. */
function labourTimes(print: Print): { label: string; value: string }[] {
  const twice = print.sides.length > 1 ? 2 : 1;
  return holding(print, print.when, print.analysis.model.labour).flatMap(({ line, variant }) => {
    const minutes = writtenMinutes(line.time);
    if (minutes === undefined) return [];
    const label = phrase('hands-on', print.language);
    return [
      { label: variant === undefined ? label : `${label}, ${variant}`, value: minutesText(minutes * twice) },
    ];
  });
}

/** What other prints of the same procedure there are. */
function otherPrints(print: Print): string {
  const { universe } = print.job;
  const sides = print.analysis.model.sides
    .filter((side) => print.sides.every(({ word }) => word !== side))
    .map((side) => sideWord(print, side));
  const options = universe.axes.flatMap((axis) => {
    const chosen = print.choice.option[axis.name];
    return axis.kind === 'option' && chosen !== undefined
      ? axis.values.filter((value) => value !== chosen).map((value) => optionText(print, axis.name, [value]))
      : [];
  });
  const all = [...sides, ...options];
  return all.length === 0 ? '' : phraseText('other-prints', print.language, { others: all.join(', ') });
}

/** The corners that are worked on, by the marks of the things that the lines act on. */
function planOf(print: Print): BlockOf<'masthead'>['plan'] {
  const words = print.sides.flatMap(({ word }) => (word === 'left' || word === 'right' ? [word] : []));
  const corners = [...print.uses.ends].flatMap((end) =>
    words.map((word) => ({
      corner: `${end === 'front' ? 'f' : 'r'}${word === 'left' ? 'l' : 'r'}` as const,
      named: `${phrase(end, print.language)} ${sideWord(print, word)}`,
    })),
  );
  if (corners.length === 0) return undefined;
  const alt = phraseText('plan-alt', print.language, {
    corners: corners.map(({ named }) => named).join(', '),
  });
  return { corners: corners.map(({ corner }) => corner), alt };
}

export function backBlocks(print: Print): Block[] {
  const isMoved = isLong(print, needGroups(print), dangerRows(print));
  return [
    ...(isMoved ? legend(print) : []),
    ...sourceBlock(print),
    ...revisionBlock(print),
    ...questionBlock(print),
  ];
}

function sourceBlock(print: Print): Block[] {
  const rows = [...print.uses.sources].map((name) => {
    const thing = print.job.scope.resolve(name);
    return { name, title: [text(thing ? titleOf(print, thing) : '')] };
  });
  rows.sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));
  return rows.length === 0 ? [] : [{ kind: 'sources', rows }];
}

function revisionBlock(print: Print): Block[] {
  const { path, model } = print.analysis;
  const signed = signedText(print);
  // Why one person signed alone, why it is withdrawn: the reader is to know it too.
  const note = written(print, path, (model.status?.prose?.text ?? '').trim().replace(/\.$/, ''));
  const said: Prose = [
    text(` ${signed}${note.length === 0 ? '' : `${phrase('colon', print.language)} `}`),
    ...note,
    text('.'),
  ];
  const rows = model.revisions.map((line, i) => {
    const number = line.number?.value;
    return {
      revision: number === undefined ? '?' : String(number.n / number.d),
      date: line.day?.text ?? '?',
      what: [
        ...written(print, path, line.prose?.text ?? ''),
        ...(i === 0 && signed !== undefined ? said : []),
      ],
    };
  });
  return rows.length === 0 ? [] : [{ kind: 'revisions', rows }];
}

function questionBlock(print: Print): Block[] {
  const rows = openQuestions(print.analysis).map(({ file, span, message }) => {
    const source = sourceOf(print, file, span.start);
    return {
      where: phraseText('line-number', print.language, { number: source?.line ?? '?' }),
      ask: [text(message)],
      ...(source ? { source } : {}),
    };
  });
  return rows.length === 0 ? [] : [{ kind: 'questions', rows }];
}
