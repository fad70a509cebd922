// Lines that a technician reads and does not tick: messages, notes, pictures, films, reasons.
import {
  type Line,
  numberOf,
  phraseText,
  resolvePath,
  SIGNAL_WORDS,
  type Thing,
  toSI,
} from '@baywright/language';
import type { Beside } from '../beside.js';
import type { Block } from '../blocks.js';
import { type Film, readFilm } from '../film.js';
import { type Prose, plain, text } from '../inline.js';
import type { Picture } from '../picture.js';
import { readPicture } from '../read-picture.js';
import { figureOf } from './measures.js';
import { capitalFirst } from './names.js';
import { type Place, type Print, sourceOf } from './print.js';
import { written } from './texts.js';
import { type Out, railNow, type Walk } from './walk.js';

type Of<K extends Line['kind']> = Extract<Line, { kind: K }>;

export function lowerMessage(walk: Walk, line: Of<'message'>, place: Place, out: Out): void {
  const { print } = walk;
  const shared = line.reference ? place.scope.resolve(line.reference.text) : undefined;
  const body = shared
    ? messageProse(print, shared)
    : written(print, place.scope.file.path, line.prose?.text ?? '');
  if (body.length === 0) return;
  const where = located(print, place, line);
  print.uses.messages.push({ signal: line.signal, body, step: String(walk.step) });
  out.push({
    kind: 'panel',
    signal: line.signal,
    word: SIGNAL_WORDS[line.signal][print.language],
    body,
    rail: railNow(walk),
    ...where,
  });
}

/** The text of a shared message: its title, and what stands below it. */
function messageProse(print: Print, thing: Thing): Prose {
  return written(print, thing.file, thing.line?.prose?.text ?? thing.title);
}

export function lowerNote(walk: Walk, line: Of<'text'>, place: Place, out: Out): void {
  const body = written(walk.print, place.scope.file.path, line.prose?.text ?? '');
  if (body.length === 0) return;
  const kind = line.word === 'because' ? 'reason' : 'note';
  out.push({ kind, body, rail: railNow(walk), ...located(walk.print, place, line) });
}

export function lowerPicture(walk: Walk, line: Of<'picture'>, place: Place, out: Out): void {
  const found = pictureAt(walk.print, line, place);
  if (!found) return;
  const where = { rail: railNow(walk), ...located(walk.print, place, line) };
  out.push(
    'picture' in found
      ? { kind: 'figure', picture: found.picture, ...where }
      : { kind: 'note', body: found.lost, ...where },
  );
}

/** The picture of a line; or, with a finding, what stands in its place where its file is no picture. */
function pictureAt(
  print: Print,
  line: Of<'picture'>,
  place: Place,
): { readonly picture: Picture } | { readonly lost: Prose } | undefined {
  const { path } = line;
  if (!path || path.hole) return undefined;
  const found = resolvePath(place.scope.file.path, path.text);
  const bytes = found === undefined ? undefined : print.shelf.bytes(found);
  const caption = plain(written(print, place.scope.file.path, line.prose?.text ?? ''));
  const source = sourceOf(print, place.scope.file.path, line.start);
  const lost = (problem: string) => {
    print.findings.push({ message: `The picture “${path.text}” ${problem}`, ...source });
    return { lost: [text(phraseText('picture-lost', print.language, { file: path.text }))] };
  };
  if (!bytes) return lost('is not there');
  const read = readPicture(bytes, caption === '' ? path.text : caption, caption === '' ? undefined : caption);
  if ('problem' in read) return lost(read.problem);
  if (read.warning !== undefined)
    print.findings.push({ message: `The picture “${path.text}” ${read.warning}`, ...source });
  return { picture: { ...read.picture, name: path.text, ...(source ? { source } : {}) } };
}

/** `Film at 5 min 36 s: …`; of a film that is not in the page, the file says where it is. */
function clipProse(
  print: Print,
  line: Of<'clip'>,
  place: Place,
  id: 'clip-at' | 'clip-here' | 'clip-on-screen',
): Prose {
  const file = line.path?.text.split('/').at(-1) ?? '?';
  const measure = line.at?.measure;
  const figure = measure ? figureOf(measure, print.language) : undefined;
  const time = figure ? `${figure.value}${figure.unit === '' ? '' : `\u00a0${figure.unit}`}` : '0\u00a0s';
  const told = written(print, place.scope.file.path, line.prose?.text ?? '');
  const head = capitalFirst(phraseText(id, print.language, { file, time }));
  return told.length === 0 ? [text(head)] : [text(`${head}: `), ...told];
}

export function lowerClip(walk: Walk, line: Of<'clip'>, place: Place, out: Out): void {
  const film = filmAt(walk.print, line, place);
  out.push({
    kind: 'clip',
    body: clipProse(walk.print, line, place, film ? 'clip-here' : 'clip-at'),
    ...(film ? { film, onPaper: clipProse(walk.print, line, place, 'clip-on-screen') } : {}),
    rail: railNow(walk),
    ...located(walk.print, place, line),
  });
}

function filmAt(print: Print, { path, at }: Of<'clip'>, place: Place): Film | undefined {
  const found = path && !path.hole ? resolvePath(place.scope.file.path, path.text) : undefined;
  const bytes = found === undefined ? undefined : print.shelf.bytes(found);
  const seconds = at?.measure && toSI(at.measure).nominal;
  return bytes && readFilm(bytes, seconds ? numberOf(seconds) : 0);
}

/** Notes, reasons, pictures and demands that stand under a statement. */
export interface Under {
  readonly notes: Prose[];
  readonly reasons: Prose[];
  readonly beside: Beside[];
  readonly rejects: Prose[];
  readonly expects: Prose[];
}

export function underOf(print: Print, lines: readonly Line[], place: Place): Under {
  const under: Under = { notes: [], reasons: [], beside: [], rejects: [], expects: [] };
  for (const line of lines) {
    const said = written(print, place.scope.file.path, line.prose?.text ?? '');
    if (line.kind === 'picture') {
      const found = pictureAt(print, line, place);
      if (found && 'picture' in found) under.beside.push({ kind: 'picture', picture: found.picture });
      else if (found) under.notes.push(found.lost);
    } else if (line.kind === 'text' && said.length > 0) {
      if (line.word === 'because') under.reasons.push(said);
      else if (line.word === 'note') under.notes.push(said);
      else if (line.word === 'reject') under.rejects.push(demand(print, 'reject', said));
      else if (line.word === 'expect') under.expects.push(demand(print, 'expect', said));
    }
  }
  return under;
}

/** `Reject: cracks`, `Expect: no code`. */
export function demand({ language }: Print, id: 'reject' | 'expect', words: Prose): Prose {
  const head = phraseText(id, language, { text: '' }).trimEnd();
  return [text(`${head}${head.endsWith(':') ? ' ' : ': '}`), ...words];
}

export function located(print: Print, place: Place, line: Line): Pick<Block, 'source'> {
  const source = sourceOf(print, place.scope.file.path, line.start);
  return source ? { source } : {};
}
