// The lines of a step in order: rows, branches, repeats, performed operations, what is read and not ticked. Where
// both sides are printed, lines that touch what each side has come once a side and all others once.
import { type Line, NEVER, phrase, phraseText, scopeOf } from '@baywright/language';
import type { Block, Depends } from '../blocks.js';
import { type Prose, plain, text } from '../inline.js';
import { located, lowerClip, lowerMessage, lowerNote, lowerPicture } from './asides.js';
import { branchHeading, dependsOf } from './branches.js';
import { capitalFirst, onSide } from './names.js';
import type { Place } from './print.js';
import { type Leading, lowerStatement, unreadRow } from './rows.js';
import { stopped } from './sentences.js';
import { runsBySide } from './sides.js';
import { written } from './texts.js';
import type { RowAt } from './uses.js';
import { forSome, variantWords } from './variant-words.js';
import { comingRow, nextRow, type Out, railNow, type Walk } from './walk.js';

/** Adds the blocks of some lines; `leading` is what a branch of one line says before it. */
export function lowerLines(
  walk: Walk,
  lines: readonly Line[],
  place: Place,
  out: Out,
  leading: Leading = {},
): void {
  for (const run of runsBySide(walk.print, lines, place)) {
    let asked: RowAt | undefined;
    for (const line of run.lines) {
      if (line.kind === 'if') lowerIf(walk, line, run.place, out, asked);
      else if (line.kind === 'otherwise') lowerOtherwise(walk, line, run.place, out, asked);
      else asked = lowerLine(walk, line, run.place, out, leading);
    }
  }
}

/** Adds one line; gives the row that a following `if` asks about. */
function lowerLine(walk: Walk, line: Line, place: Place, out: Out, leading: Leading): RowAt | undefined {
  switch (line.kind) {
    case 'statement': {
      const row = lowerStatement(walk, line, place, out, leading);
      for (const under of line.children) if (under.kind === 'clip') lowerClip(walk, under, place, out);
      lowerOutcomes(walk, line.children, place, out, row);
      return row;
    }
    case 'when':
      lowerWhen(walk, line, place, out);
      break;
    case 'perform':
      lowerPerform(walk, line, place, out);
      break;
    case 'operation':
    case 'step':
      lowerLines(walk, line.children, place, out);
      break;
    case 'repeat':
      lowerRepeat(walk, line, place, out);
      break;
    case 'message':
      lowerMessage(walk, line, place, out);
      break;
    case 'picture':
      lowerPicture(walk, line, place, out);
      break;
    case 'clip':
      lowerClip(walk, line, place, out);
      break;
    case 'text':
      lowerText(walk, line, place, out, leading);
      break;
    case 'unread':
      unreadRow(walk, line, place, out);
      break;
    default:
      break;
  }
  return undefined;
}

function lowerText(
  walk: Walk,
  line: Extract<Line, { kind: 'text' }>,
  place: Place,
  out: Out,
  leading: Leading,
): void {
  const { print } = walk;
  const body = written(print, place.scope.file.path, line.prose?.text ?? '');
  if (line.word === 'stop') {
    const at = nextRow(walk);
    const shown = body.length > 0 ? body : [text(capitalFirst(phrase('stop-here', print.language)))];
    out.push({
      kind: 'stop',
      id: at.row,
      number: at.number,
      ...leading,
      body: shown,
      rail: railNow(walk),
      ...located(print, place, line),
    });
  } else if (line.word === 'do' || line.word === 'hold' || line.word === 'item') {
    const at = nextRow(walk);
    const isHold = line.word === 'hold';
    const reasons = line.children.flatMap((child) =>
      child.kind === 'text' && child.word === 'because'
        ? [written(print, place.scope.file.path, child.prose?.text ?? '')]
        : [],
    );
    if (isHold) print.uses.holds.push({ ...at, what: body, ...onSide(print, place, plain(body)) });
    out.push({
      kind: 'row',
      id: at.row,
      number: at.number,
      ...leading,
      body: stopped(
        body.length > 0
          ? body
          : [text(capitalFirst(phrase(isHold ? 'hold-here' : 'do-here', print.language)))],
      ),
      notes: [],
      reasons,
      beside: isHold ? [{ kind: 'hold', id: `hold-${at.row}` }] : [],
      marks: [],
      rail: railNow(walk),
      changes: [],
      ...forSome(print, place),
      ...located(print, place, line),
    });
  } else lowerNote(walk, line, place, out);
}

function lowerWhen(walk: Walk, line: Extract<Line, { kind: 'when' }>, place: Place, out: Out): void {
  const { print } = walk;
  const when = print.job.universe.diagrams.and(place.when, print.job.where(line.guard));
  if (when === NEVER) return;
  const inner = { ...place, when };
  const variant = variantWords(print, when, place.when);
  if (variant === undefined) {
    lowerLines(walk, line.children, inner, out);
    return;
  }
  const items: Block[] = [];
  lowerLines(walk, line.children, inner, items);
  const heading = [
    text(`${phraseText('only-with', print.language, { variant })}${phrase('colon', print.language)}`),
  ];
  if (items.length > 0)
    out.push({ kind: 'branch', heading, items, rail: railNow(walk), ...located(print, place, line) });
}

function lowerRepeat(walk: Walk, line: Extract<Line, { kind: 'repeat' }>, place: Place, out: Out): void {
  const { print } = walk;
  const items: Block[] = [];
  lowerLines(walk, line.children, place, items);
  const times = line.times?.amounts[0]?.number.value;
  const count = times === undefined ? undefined : Number(times.n / times.d);
  const told = written(print, place.scope.file.path, line.prose?.text ?? '');
  const amount = count === undefined ? undefined : `${count} ${phrase('times', print.language)}`;
  const head =
    amount === undefined
      ? phrase('repeat', print.language)
      : phraseText('repeat-times', print.language, { amount });
  out.push({
    kind: 'repeat',
    heading: [text(`${head}${phrase('colon', print.language)}${told.length > 0 ? ' ' : ''}`), ...told],
    ...(count === undefined ? {} : { times: count }),
    items,
    rail: railNow(walk),
    ...located(print, place, line),
  });
}

/** Lines of an operation, of this file or of another, where it is performed. */
function lowerPerform(walk: Walk, line: Extract<Line, { kind: 'perform' }>, place: Place, out: Out): void {
  const found = performed(walk, line, place);
  if (!found) return;
  lowerLines(walk, found.lines, found.place, out);
}

export interface Performed {
  readonly lines: readonly Line[];
  readonly place: Place;
  readonly title: string;
  readonly number: string | undefined;
}

export function performed(
  walk: Walk,
  line: Extract<Line, { kind: 'perform' }>,
  place: Place,
): Performed | undefined {
  const { job } = walk.print;
  const from = line.from && !line.from.hole ? job.imports.numbered(line.from.text) : place.scope.file;
  const operation = from?.operations.find(({ name }) => name === line.operation?.text);
  const when = job.universe.diagrams.and(place.when, job.where(line.guard));
  if (!from || !operation?.line || when === NEVER) return undefined;
  const scope = job.scopes.find(({ file }) => file.path === from.path) ?? scopeOf(from, job.imports);
  return {
    lines: operation.line.children,
    place: { ...place, when, scope },
    title: operation.title,
    number: from === place.scope.file ? undefined : from.number,
  };
}

/** The `if` and `otherwise` under a statement, asking about its row. */
function lowerOutcomes(
  walk: Walk,
  lines: readonly Line[],
  place: Place,
  out: Out,
  row: RowAt | undefined,
): void {
  for (const line of lines) {
    if (line.kind === 'if') lowerIf(walk, line, place, out, row);
    else if (line.kind === 'otherwise') lowerOtherwise(walk, line, place, out, row);
  }
}

function lowerIf(
  walk: Walk,
  line: Extract<Line, { kind: 'if' }>,
  place: Place,
  out: Out,
  row: RowAt | undefined,
): void {
  lowerBranch(walk, line, place, out, branchHeading(walk, line, row), dependsOf(walk, line, row));
}

function lowerOtherwise(walk: Walk, line: Line, place: Place, out: Out, row: RowAt | undefined): void {
  const depends: Depends | undefined = row ? { row: row.row, result: 'good' } : undefined;
  lowerBranch(
    walk,
    line,
    place,
    out,
    [text(`${phrase('otherwise', walk.print.language)}${phrase('colon', walk.print.language)}`)],
    depends,
  );
}

/** One line alone carries its condition; several stand under a heading. */
function lowerBranch(
  walk: Walk,
  line: Line,
  place: Place,
  out: Out,
  heading: Prose,
  depends: Depends | undefined,
): void {
  const inner = { ...place, maybe: true };
  const more = depends ? { depends } : {};
  const [start, blocks] = [comingRow(walk), out.length];
  const noteBranch = (): void => {
    if (!depends || out.length === blocks) return;
    const to = comingRow(walk).row === start.row ? undefined : start;
    const asks = line.kind === 'if' ? line : undefined;
    walk.branches.push({ on: depends, test: asks?.test, limit: asks?.subject?.text, to });
  };
  const [only] = line.children;
  const told = written(walk.print, place.scope.file.path, line.prose?.text ?? '');
  const isAlone = line.children.length === 1 && told.length === 0 && isSingle(only);
  if (isAlone) {
    lowerLines(walk, line.children, inner, out, { condition: heading, ...more });
    noteBranch();
    return;
  }
  const items: Block[] = [];
  lowerLines(walk, line.children, inner, items);
  const shown = told.length > 0 ? [...heading, text(' '), ...told] : heading;
  if (items.length > 0 || told.length > 0) {
    out.push({
      kind: 'branch',
      heading: shown,
      ...more,
      items,
      rail: railNow(walk),
      ...located(walk.print, place, line),
    });
  }
  noteBranch();
}

function isSingle(line: Line | undefined): boolean {
  if (line?.kind === 'statement') return line.items.length <= 1 && line.verb.text !== 'wear';
  return line?.kind === 'text' && (line.word === 'stop' || line.word === 'do' || line.word === 'hold');
}
