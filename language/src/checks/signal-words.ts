// H101 to H106: signal words where they stand and what they say, by ANSI Z535.6, ISO 3864-2 and IEC/IEEE 82079-1.
import { type DiagnosticDef, type Finding, type Fix, finding } from '../diagnostics/define.js';
import { messageAfterAction } from '../diagnostics/h101-message-after-action.js';
import { noticeOfInjury } from '../diagnostics/h102-notice-of-injury.js';
import { cautionOfDamage } from '../diagnostics/h103-caution-of-damage.js';
import { graveWordForDamage } from '../diagnostics/h104-grave-word-for-damage.js';
import { signalTooWeak } from '../diagnostics/h105-signal-too-weak.js';
import { messageRepeated } from '../diagnostics/h106-message-repeated.js';
import { isEndOfDraft } from '../names/draft.js';
import type { Job } from '../names/job.js';
import type { Line } from '../syntax/tree.js';
import { HARM_WORDS, hasWord } from '../vocabulary/hazard-words.js';
import type { Language } from '../vocabulary/kinds.js';
import type { Signal } from '../vocabulary/signals.js';
import type { Check } from './check.js';
import { type Message, messagesOf } from './messages.js';
import { lineEnd, lineStart, workLines } from './own-lines.js';

export const signalWords: Check = ({ job, library }) => {
  const language = library.settings.languages[0] ?? 'en';
  const messages = messagesOf(job);
  return [
    ...placeFindings(job),
    ...messages.flatMap((m) => meaningFindings(job, m, language)),
    ...repeatFindings(job, messages),
  ];
};

/**
 * Messages below the statement they protect, and messages with nothing after them in their block that acts. The last
 * messages of a preparing step stand before the work they are about; those at the end of a draft, before what is still
 * to be written.
 */
function placeFindings(job: Job): Finding[] {
  const found: Finding[] = [];
  const preparing = job.file.work.filter((s) => s.word === 'preparation' && s !== job.file.work.at(-1));
  for (const { line } of workLines(job)) {
    if (line.kind === 'statement') {
      for (const child of line.children)
        if (child.kind === 'message') found.push(placed(job, child, line, true));
    } else if (
      line.kind === 'step' ||
      line.kind === 'when' ||
      line.kind === 'if' ||
      line.kind === 'otherwise' ||
      line.kind === 'repeat'
    ) {
      const last = line.children.findLastIndex(acts);
      const first = line.children.find(acts);
      if (
        !first ||
        isEndOfDraft(job.file, line) ||
        (line.kind === 'step' && preparing.some((s) => s.start < line.start && line.start < s.end))
      )
        continue;
      for (const child of line.children.slice(last + 1))
        if (child.kind === 'message') found.push(placed(job, child, first, false));
    }
  }
  return found;
}

function placed(
  job: Job,
  message: Line & { readonly kind: 'message' },
  before: Line,
  below: boolean,
): Finding {
  const fixes = [moveUp(job, message, before)];
  return finding(
    messageAfterAction,
    { file: job.file.path, span: message.head, fixes },
    { signal: message.signal, below },
  );
}

function acts(line: Line): boolean {
  return (
    line.kind === 'statement' ||
    line.kind === 'perform' ||
    line.kind === 'when' ||
    line.kind === 'if' ||
    line.kind === 'otherwise' ||
    line.kind === 'repeat' ||
    (line.kind === 'text' && (line.word === 'do' || line.word === 'hold' || line.word === 'stop'))
  );
}

function moveUp(job: Job, message: Line, before: Line): Fix {
  const { path: file, tree } = job.file;
  const from = { start: lineStart(tree.text, message.start), end: lineEnd(tree.text, message.end) };
  const shift = before.indent - message.indent;
  const block = tree.text.slice(from.start, from.end).split('\n');
  const moved = block
    .map((l) =>
      l.trim() === '' ? l : ' '.repeat(Math.max(0, l.length - l.trimStart().length + shift)) + l.trimStart(),
    )
    .join('\n');
  const at = lineStart(tree.text, before.start);
  return {
    title: 'Move it before the action',
    edits: [
      { file, span: { start: at, end: at }, text: moved.endsWith('\n') ? moved : `${moved}\n` },
      { file, span: from, text: '' },
    ],
  };
}

/** The word against the text, in the language the library is written in. At most one finding for each message. */
function meaningFindings(job: Job, { line, text }: Message, language: Language): Finding[] {
  const words = HARM_WORDS[language];
  const grave = hasWord(text, words.grave);
  const injury = grave || hasWord(text, words.injury);
  const damage = hasWord(text, words.damage);
  const rule = (def: DiagnosticDef<{ readonly word: string }>, better: Signal) => {
    const fixes = [
      {
        title: `Write \`${better}\``,
        edits: [{ file: job.file.path, span: { start: line.head.start, end: line.head.end }, text: better }],
      },
    ];
    return [finding(def, { file: job.file.path, span: line.head, fixes }, { word: line.signal })];
  };
  if (line.signal === 'notice') return injury ? rule(noticeOfInjury, grave ? 'warning' : 'caution') : [];
  if (line.signal === 'caution' && grave) return rule(signalTooWeak, 'warning');
  if (injury || !damage) return [];
  return line.signal === 'caution' ? rule(cautionOfDamage, 'notice') : rule(graveWordForDamage, 'notice');
}

/** The same text twice in one stretch of work; two operations may be done apart, so each may say it. */
function repeatFindings(job: Job, messages: readonly Message[]): Finding[] {
  const { path: file } = job.file;
  const first = new Map<string, Message>();
  const found: Finding[] = [];
  for (const message of messages) {
    const text = message.text
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, ' ')
      .trim();
    const key = `${message.work.operation?.start ?? ''} ${text}`;
    const before = first.get(key);
    if (text === '') continue;
    if (!before) first.set(key, message);
    else if (job.universe.diagrams.and(before.work.when, message.work.when) !== 0) {
      const related = [{ file, span: before.line.code, message: 'given here' }];
      found.push(
        finding(messageRepeated, { file, span: message.line.head, related }, { word: message.line.signal }),
      );
    }
  }
  return found;
}
