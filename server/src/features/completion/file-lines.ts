// Completion at the left edge: the opening line first, then what a file of its kind still lacks, in the order of a file.
import {
  fittingHalf,
  fittingText,
  HEADS_IN,
  type Line,
  SECTIONS,
  type SectionDef,
  walkLines,
} from '@baywright/language';
import { CompletionItemKind } from 'vscode-languageserver';
import type { Snapshot } from '../../snapshot.js';
import { type Offer, word } from './answer.js';
import type { Cursor } from './cursor.js';
import { snippetOffers } from './snippets.js';

export function fileOffers(snapshot: Snapshot, cursor: Cursor): Offer[] {
  const { lines } = snapshot.tree;
  const opening = lines.find((l) => l.kind === 'procedure' || l.kind === 'catalogue');
  const isOpening = !opening || opening.start >= cursor.lineStart;
  const heads = [...(HEADS_IN.get('file')?.values() ?? [])];
  if (isOpening)
    return [
      ...(snapshot.client.snippets ? snippetOffers(snapshot, 'file', undefined) : []),
      ...heads.filter((h) => OPENINGS.has(h.word)).map((h) => word(h.word, h.docs, { insert: `${h.word} ` })),
    ];
  const isCatalogue = opening.kind === 'catalogue';
  const above = lines.filter((l) => l.start < cursor.lineStart);
  const there = new Set(lines.filter((l) => l.start !== cursor.lineStart).map((l) => l.head.text));
  const words = heads
    .filter((h) => !OPENINGS.has(h.word) && !(isCatalogue && OF_PROCEDURES.has(h.word)))
    .filter((h) => !(ONCE.has(h.word) && there.has(h.word)))
    .map((h) => word(h.word, h.docs, { insert: `${h.word} `, goesOn: GOES_ON.has(h.word) }));
  const last = above.findLast((l) => l.kind === 'section');
  const sections = sectionsBehind(last?.head.text, there)
    .filter((s) => !isCatalogue || s.declares)
    .map((s) => word(s.word, s.docs));
  return last ? [...fittingOffers(snapshot, cursor, there), ...sections, ...words] : [...words, ...sections];
}

/**
 * What ends the block the cursor stands in: the next step, and the sections that are not there yet. An editor keeps the
 * indent of the line above, and whoever begins another block should not have to take it back first.
 */
export function leavingOffers(snapshot: Snapshot, cursor: Cursor): Offer[] {
  const { lines } = snapshot.tree;
  const there = new Set(lines.map((l) => l.head.text));
  const isCatalogue = lines.some((l) => l.kind === 'catalogue');
  let step: Line | undefined;
  walkLines(snapshot.tree, (line) => {
    if (line.start >= cursor.lineStart) return false;
    if (line.kind === 'step') step = line;
    return undefined;
  });
  const head = HEADS_IN.get('work')?.get('step');
  const isInStep = cursor.context === 'step' || cursor.context === 'statement';
  const next =
    isInStep && step && head ? [word('step', head.docs, { insert: 'step: ', column: step.indent })] : [];
  const sections = sectionsBehind(cursor.section, there)
    .filter((s) => !there.has(s.word) && (!isCatalogue || s.declares))
    .map((s) => word(s.word, s.docs, { column: 0 }));
  return [...next, ...fittingOffers(snapshot, cursor, there).map((o) => ({ ...o, column: 0 })), ...sections];
}

/** The whole half that is still to be written, where its section is being named: to work it out takes its time. */
function fittingOffers(snapshot: Snapshot, { word }: Cursor, there: ReadonlySet<string>): Offer[] {
  const section = 'installation';
  if (word === '' || !section.startsWith(word) || there.has(section)) return [];
  const { run } = snapshot.analysis();
  const text = run ? fittingText(fittingHalf(run)) : '';
  if (text === '') return [];
  const docs = `${snapshot.say.fittingHalf}\n\n\`\`\`baywright\n${text}\`\`\``;
  return [{ label: `${section} …`, kind: CompletionItemKind.Snippet, docs, insert: text.trimEnd() }];
}

/** Sections that are not there yet, those that usually follow the one above first; then those that are. */
function sectionsBehind(last: string | undefined, there: ReadonlySet<string>): SectionDef[] {
  const at = SECTIONS.findIndex((s) => s.word === last) + 1;
  const round = [...SECTIONS.slice(at), ...SECTIONS.slice(0, at)];
  return [...round.filter((s) => !there.has(s.word)), ...round.filter((s) => there.has(s.word))];
}

const OPENINGS: ReadonlySet<string> = new Set(['procedure', 'catalogue']);
const OF_PROCEDURES: ReadonlySet<string> = new Set([
  'applies to',
  'sides',
  'labour',
  'crew',
  'status',
  'review',
  'operation',
]);
/** What a file says once. */
const ONCE: ReadonlySet<string> = new Set(['sides', 'crew', 'status', 'review']);
const GOES_ON: ReadonlySet<string> = new Set(['use', 'applies to', 'sides', 'status', 'revision']);
