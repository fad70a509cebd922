// F101 to F104: threads, classes and head sizes by their standards.
import { type Finding, finding } from '../diagnostics/define.js';
import { threadUnreadable } from '../diagnostics/f101-thread-unreadable.js';
import { threadNotListed } from '../diagnostics/f102-thread-not-listed.js';
import { classUnknown } from '../diagnostics/f103-class-unknown.js';
import { headAgainstThread } from '../diagnostics/f104-head-against-thread.js';
import { clausesOf, type Thing } from '../names/model.js';
import type { Raw } from '../syntax/tree.js';
import { memory } from '../text/once.js';
import type { Span } from '../text/span.js';
import { headSuspicious, hexalobularSuspicious, isKey } from '../trade/heads.js';
import { sourceTitle } from '../trade/sources.js';
import { isClass } from '../trade/strength.js';
import { isThread, readThread, type Thread } from '../trade/thread.js';
import { FORMLESS, isBareBolt, isRetainer } from '../vocabulary/formless.js';
import { nearest } from '../vocabulary/near.js';
import type { Check } from './check.js';
import { classClauses, millimetres, threadRaw } from './fastener-facts.js';

export const threadsAndHeads: Check = ({ job }) => {
  const { path, things, tree } = job.file;
  return things
    .filter((t) => t.kind === 'fastener')
    .flatMap((thing) =>
      judged(thing, () => [...threadFindings(path, tree.text, thing), ...classFindings(path, thing)]),
    );
};

/** `M6x1.0 8.8`, as it stands on the drawing; `M10 x 1.5 cl. 8.8`, `1/2-13 UNC gr 5`, as it is said. */
function withStrength(text: string): string | undefined {
  for (const [word, said] of STRENGTHS) {
    const [, ahead, strength] = said.exec(text) ?? [];
    const thread = ahead?.replace(/ *([x×]) */i, '$1');
    if (thread !== undefined && isThread(readThread(thread))) return `${thread}, ${word} ${strength}`;
  }
  return undefined;
}

const STRENGTHS = [
  ['class', /^(.+?)[ ,]+(?:cl(?:ass)?\.? *)?(\d{1,2}\.\d)$/i],
  ['grade', /^(.+?)[ ,]+gr(?:ade)?\.? *(\d(?:\.\d)?)$/i],
] as const;

/** `M10x1.5x40` and `3/8-16 x 1 1/2 in`, as bolts are ordered. */
function withLength(text: string): string | undefined {
  const [, ahead = '', length, unit = 'mm'] = /^(.+?) *[x×] *(\d[\d ./]*?) *(mm|in|")?$/i.exec(text) ?? [];
  const thread = ahead.replace(/ *([x×]) */i, '$1');
  if (length === undefined || !/\D\d*[x×-]\d/i.test(thread) || !isThread(readThread(thread)))
    return undefined;
  return `${thread}, length ${length} ${unit === '"' ? 'in' : unit}`;
}

/** `bolt M8x1.25`, `M8x1.25 bolts`: the thread, where all beside it are words. */
function withoutWords(text: string): string | undefined {
  const [, thread] =
    /^(?:[\p{L}-]+ )+(?=\S*\d)(.+)$/u.exec(text) ?? /^(\S*\d\S*)(?: [\p{Ll}-]+)+$/u.exec(text) ?? [];
  return thread !== undefined && isThread(readThread(thread)) ? thread : undefined;
}

/** A set is judged by its entry alone. */
const judged = memory<Thing, readonly Finding[]>();

function threadFindings(file: string, text: string, thing: Thing): Finding[] {
  const raw = threadRaw(thing);
  if (!raw || raw.hole || raw.text === '' || isRetainer(raw.text)) return [];
  const word = retainerMeant(raw.text);
  if (word !== undefined) return [unknownRetainer(file, raw, word)];
  const thread = readThread(raw.text);
  if (!isThread(thread)) {
    const { problem, nearest } = thread;
    const bare = withoutWords(raw.text);
    if (bare !== undefined) {
      const data = {
        problem: `“${raw.text}” says more than a thread: what it is goes into the title`,
        nearest: bare,
      };
      return [finding(threadUnreadable, { file, span: raw, fixes: replaced(file, raw, bare) }, data)];
    }
    const meant = withStrength(raw.text) ?? withLength(raw.text);
    if (meant !== undefined) {
      return [
        finding(
          threadUnreadable,
          { file, span: raw, fixes: replaced(file, raw, meant) },
          { problem, nearest: meant },
        ),
      ];
    }
    return [
      finding(
        threadUnreadable,
        { file, span: raw, fixes: replaced(file, raw, nearest) },
        { problem, nearest },
      ),
    ];
  }
  if (!thread.known) {
    const { designation, nearest } = thread;
    const data = { thread: designation, standard: sourceTitle(thread.source), nearest };
    return [finding(threadNotListed, { file, span: raw, fixes: replaced(file, raw, nearest) }, data)];
  }
  return headFindings(file, text, thing, thread);
}

/** The retainer that a text without a thread in it may mean; undefined where a thread was meant, and is misspelt. */
function retainerMeant(text: string): readonly string[] | undefined {
  if (/^(?:1\/4|quarter)[ -]?turns?$/i.test(text)) return ['quarter-turn'];
  return /\d/.test(text) || text.length < 3
    ? undefined
    : nearest(text.toLowerCase().replaceAll(' ', '-'), FORMLESS);
}

function unknownRetainer(file: string, raw: Raw, near: readonly string[]): Finding {
  if (isBareBolt(raw.text)) {
    const problem = `“${raw.text}” says no thread: write it as M12x1.75, or as ? while it is not known`;
    return finding(
      threadUnreadable,
      { file, span: raw, fixes: replaced(file, raw, '?') },
      { problem, nearest: undefined },
    );
  }
  const words = [...FORMLESS].slice(0, 5).map((word) => `\`${word}\``);
  return finding(
    threadUnreadable,
    { file, span: raw, fixes: near.flatMap((word) => replaced(file, raw, word)) },
    {
      problem: `“${raw.text}” is neither a thread such as M12x1.75 nor a retainer such as ${words.join(', ')}`,
      nearest: near[0],
    },
  );
}

function headFindings(file: string, text: string, thing: Thing, thread: Thread): Finding[] {
  const found: Finding[] = [];
  for (const word of ['hex', 'twelve-point']) {
    const size = millimetres(thing, word);
    const odd = size && headSuspicious(thread, size.mm);
    const measure = size?.at.clause.spec;
    if (!odd || !measure) continue;
    const head = text.slice(measure.start, measure.end);
    const inOrder = [...odd.usual].sort((a, b) => a.acrossFlatsMm - b.acrossFlatsMm);
    const usual = [
      ...new Set(inOrder.map((h) => `${isKey(thread, h.acrossFlatsMm) ? 'key ' : ''}${h.printed}`)),
    ];
    found.push(
      finding(
        headAgainstThread,
        { file, span: measure },
        { head, thread: thread.designation, usual, suggests: odd.suggests },
      ),
    );
  }
  const six = clausesOf(thing, 'hexalobular')[0]?.clause.raw;
  const odd = six && !six.hole ? hexalobularSuspicious(thread, six.text) : undefined;
  if (six && odd) {
    found.push(
      finding(
        headAgainstThread,
        { file, span: six },
        { head: six.text, thread: thread.designation, usual: odd.usual, suggests: [] },
      ),
    );
  }
  return found;
}

function classFindings(file: string, thing: Thing): Finding[] {
  return classClauses(thing).flatMap(({ raw, read, at }) => {
    if (isClass(read)) return [];
    const nearest = read.nearest?.replace(/^(class|grade) /, '');
    const sameWord = read.nearest?.startsWith(at.clause.word) ?? false;
    const span = sameWord ? raw : at.clause;
    const fixes = replaced(file, span, sameWord ? nearest : read.nearest);
    return [
      finding(classUnknown, { file, span: raw, fixes }, { problem: read.problem, nearest: read.nearest }),
    ];
  });
}

function replaced(file: string, span: Span, by: string | undefined) {
  return by === undefined
    ? []
    : [{ title: `Write \`${by}\``, edits: [{ file, span: { start: span.start, end: span.end }, text: by }] }];
}
