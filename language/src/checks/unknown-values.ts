// Q120: every hole of the file, with what is asked.
import { type Finding, finding } from '../diagnostics/define.js';
import { valueNotKnown } from '../diagnostics/quantities.js';
import { everyLine, linesOfWork } from '../names/job.js';
import type { FileModel } from '../names/model.js';
import { writtenQuantities } from '../names/quantities.js';
import type { Clause, Line } from '../syntax/tree.js';
import { once } from '../text/once.js';
import type { Span } from '../text/span.js';
import type { Check } from './check.js';

export const unknownValues: Check = ({ job: { file } }) => {
  const found: Finding[] = [];
  const ask = (at: Span, what: string) =>
    found.push(finding(valueNotKnown, { file: file.path, span: { start: at.start, end: at.end } }, { what }));
  for (const { node, word, thing, statement } of writtenQuantities(file)) {
    const owner = thing?.name ?? statement?.items[0]?.name.text ?? statement?.verb.text;
    for (const { number } of node.amounts) if (number.hole) ask(number, subject(word, owner));
  }
  for (const line of file.lines.flatMap(withHoles)) {
    const owner = ownersOf(file).get(line);
    for (const { at, what } of holesOf(line, owner)) ask(at, what);
  }
  return found;
};

/** Lines with a hole in their code: the same until something in the section is edited. */
const withHoles = once((top: Line): readonly Line[] =>
  everyLine([top]).filter(({ broken, tokens }) => !broken && tokens.some(({ kind }) => kind === 'hole')),
);

const ownersOf = once((file: FileModel): ReadonlyMap<Line, string> => {
  const owners = new Map<Line, string>();
  for (const { line, name } of file.things)
    if (line) for (const below of everyLine(line.children)) owners.set(below, name);
  for (const line of linesOfWork(file))
    if (line.kind === 'statement')
      for (const below of [line, ...line.children])
        owners.set(below, line.items[0]?.name.text ?? line.verb.text);
  return owners;
});

/** Holes that are no quantities: part numbers, sheets, threads, counts, paths. */
function holesOf(line: Line, owner: string | undefined): { at: Span; what: string }[] {
  switch (line.kind) {
    case 'procedure':
      return line.number?.hole ? [{ at: line.number, what: 'the number of the procedure' }] : [];
    case 'use':
    case 'picture':
    case 'clip':
      return line.path?.hole ? [{ at: line.path, what: 'the file' }] : [];
    case 'crew':
      return line.count?.hole ? [{ at: line.count, what: 'the number of technicians' }] : [];
    case 'perform':
      return line.from?.hole ? [{ at: line.from, what: 'the procedure' }] : [];
    case 'applies':
      return [line.from, line.to].flatMap((year) =>
        year?.hole ? [{ at: year, what: 'the model year' }] : [],
      );
    case 'statement':
      return [
        ...line.items.flatMap((item) =>
          item.count?.hole ? [{ at: item.count, what: `the number of \`${item.name.text}\`` }] : [],
        ),
        ...line.clauses.flatMap((c) => inClause(c, owner)),
      ];
    case 'clauses':
    case 'prerequisite':
      return line.clauses.flatMap((c) => inClause(c, owner));
    default:
      return [];
  }
}

function inClause(
  { word, raw, count, items }: Clause,
  owner: string | undefined,
): { at: Span; what: string }[] {
  const found: { at: Span; what: string }[] = [];
  if (count?.hole)
    found.push({
      at: { start: count.start, end: count.start + 1 },
      what: `the number of \`${owner ?? 'them'}\``,
    });
  if (raw?.hole) found.push({ at: raw, what: subject(word === 'of' ? 'thread' : word, owner) });
  for (const item of items)
    if (item.count?.hole)
      found.push({
        at: { start: item.count.start, end: item.count.start + 1 },
        what: `the number of \`${item.name.text}\``,
      });
  return found;
}

const WORDS: ReadonlyMap<string, string> = new Map([
  ['bare', 'value'],
  ['per', 'source'],
  ['number', 'part number'],
  ['wait', 'waiting time'],
  ['over', 'limit of the rule'],
  ['at least', 'lower limit'],
  ['at most', 'upper limit'],
  ['repeat', 'number of times'],
  ['clip', 'place in the film'],
  ['labour', 'labour time'],
]);

/** `the torque of hub-bolt`. */
function subject(word: string, owner: string | undefined): string {
  return `the ${WORDS.get(word) ?? word}${owner === undefined ? '' : ` of \`${owner}\``}`;
}
