// Hover: the thing under the pointer and how it stands at that line, a quantity in both systems, help for verbs,
// clauses and heads, and the explanation of a finding there.
import {
  DIAGNOSTICS,
  detailText,
  ENTRY_CLAUSE_BY_WORD,
  formatMeasure,
  HEADS,
  type Line,
  limitsOf,
  type MeasureNode,
  NEEDS,
  pathAt,
  phrase,
  resolvePath,
  SECTION_BY_WORD,
  SECTIONS,
  STEP_CLAUSE_BY_WORD,
  type StateFact,
  stateAt,
  touches,
  VERB_BY_WORD,
} from '@baywright/language';
import { type Hover, type HoverParams, MarkupKind } from 'vscode-languageserver';
import { meantAt } from '../locate.js';
import type { Snapshot } from '../snapshot.js';
import type { View } from '../view.js';
import { documentFeature } from './feature.js';
import { dialLines } from './hover/dial.js';
import { figuresAt, preloadLine, torqueOf } from './hover/joint.js';
import { operationLines } from './hover/operation.js';
import { orderLine } from './hover/order.js';
import { thingCard } from './hover/thing.js';
import { timeLine } from './hover/time.js';
import { aboutValue, type Found } from './hover/value.js';
import { wearLine } from './hover/wear.js';
import { IF_TESTS } from './if-tests.js';
import { measuresOf, otherForm, unitDefinition } from './quantities.js';
import { settingsHover } from './settings-file/hover.js';

export const hover = documentFeature<HoverParams>(
  'textDocument/hover',
  { hoverProvider: true },
  async (snapshot, { position }, view): Promise<Hover | null> => {
    const offset = snapshot.positions.offset(position);
    const line = pathAt(snapshot.tree, offset).pop();
    const found = line
      ? (aboutQuantity(snapshot, line, offset) ??
        (await aboutThing(snapshot, line, offset, view)) ??
        aboutValue(snapshot, line, offset) ??
        aboutImport(snapshot, line, offset) ??
        aboutWord(snapshot, line, offset))
      : undefined;
    const reasons = await aboutFindings(snapshot, offset, view);
    const time = line && touches(line.code, offset) ? await timeLine(snapshot, line, view) : undefined;
    const text = [found?.text, time, ...reasons].filter((t) => t !== undefined).join('\n\n---\n\n');
    if (text === '') return null;
    return {
      contents: { kind: MarkupKind.Markdown, value: text },
      ...(found ? { range: snapshot.range(found.span) } : {}),
    };
  },
  settingsHover,
);

async function aboutThing(
  snapshot: Snapshot,
  line: Line,
  offset: number,
  view: View,
): Promise<Found | undefined> {
  // On `torque` of `{hub-bolt torque}` the thing is meant too: its card has the figure.
  const reference = line.prose?.references.find((r) => touches(r, offset));
  const meant = meantAt(snapshot, offset) ?? (reference && meantAt(snapshot, reference.name.start));
  if (!meant) return undefined;
  const facts =
    line.kind === 'statement'
      ? (await stateBefore(snapshot, line, view)).filter((f) => f.thing.id === meant.thing.id)
      : [];
  const state = facts.map((f) => stateInWords(snapshot, f)).join('  \n');
  return {
    text: [
      thingCard(snapshot, meant.thing),
      wearLine(meant.thing, snapshot.say),
      orderLine(snapshot, meant.thing),
      dialLines(snapshot, line),
      operationLines(snapshot, meant.thing),
      state,
    ]
      .filter((t) => t !== '')
      .join('\n\n'),
    span: meant.span,
  };
}

/** The file that is imported: what it is and how much it declares. */
function aboutImport(snapshot: Snapshot, line: Line, offset: number): Found | undefined {
  if (line.kind !== 'use' || !line.path || line.path.hole || !touches(line.path, offset)) return undefined;
  const path = resolvePath(snapshot.path, line.path.text);
  const model = path === undefined ? undefined : snapshot.library.model(path);
  if (!model) return undefined;
  const counts = SECTIONS.flatMap(({ word, declares }) => {
    const count = declares ? model.things.filter((t) => t.kind === declares).length : 0;
    return count === 0 ? [] : [`${word} ${count}`];
  });
  return { text: `**${model.title}** · ${model.path}\n\n${counts.join(', ')}`, span: line.path };
}

function stateInWords({ say, client }: Snapshot, { group, said, variants }: StateFact): string {
  const detail = detailText(said, client.language);
  const state = say.beforeLine(phrase(`group-${group}`, client.language));
  return `${state}${detail === '' ? '' : `, ${detail}`}${variants === undefined ? '' : ` (${say.when(variants)})`}`;
}

/** The state just before a line, asked of the last analysis where the work above is the same, else of a fresh one. */
async function stateBefore(snapshot: Snapshot, line: Line, view: View): Promise<StateFact[]> {
  const lineStart = snapshot.positions.lineStart(line.firstLine);
  const { analysis, offset } = snapshot.standing(lineStart) ?? {
    analysis: await view.analysed(snapshot),
    offset: lineStart,
  };
  return analysis.run ? stateAt(analysis.run, offset + line.start - lineStart) : [];
}

function aboutQuantity(snapshot: Snapshot, line: Line, offset: number): Found | undefined {
  const node = measuresOf(line).find((m) => touches(m, offset));
  if (!node) return undefined;
  if (!node.measure) {
    const unit = node.amounts.find((a) => a.unit && a.unit.readings.length > 1)?.unit;
    return (
      unit && {
        text: snapshot.say.mayMean(
          unit.spelling,
          unit.readings.map((r) => `**${r.unit.symbol}**`),
        ),
        span: node,
      }
    );
  }
  const other = otherForm(node);
  const unit = node.amounts.find((a) => a.unit && touches(a.unit, offset))?.unit?.unit;
  const lines = [
    `**${formatMeasure(node.measure)}**${other === undefined ? '' : ` ${other}`}`,
    asRange(node),
    unit ? `${unit.names[snapshot.client.language].other} (${unit.kind})` : undefined,
    unit && unitDefinition(unit),
    aboutJoint(snapshot, line, node),
  ];
  return {
    text: lines.filter((l) => l !== undefined).join('  \n'),
    span: snapshot.text.length >= node.end ? node : line.code,
  };
}

/** What a torque in the entry of a fastener does to its joint. */
function aboutJoint(snapshot: Snapshot, line: Line, node: MeasureNode): string | undefined {
  const torque = torqueOf(line);
  if (!torque || node.start < torque.start || node.end > torque.end) return undefined;
  const figures = figuresAt(snapshot, snapshot.job().scope, torque);
  return figures && preloadLine(figures, snapshot.say);
}

/** A tolerance as the range it allows. */
function asRange({ measure }: MeasureNode): string | undefined {
  if (measure?.form !== 'amount' || (measure.plus === undefined && measure.minus === undefined))
    return undefined;
  const { low, high } = limitsOf(measure);
  if (!low || !high) return undefined;
  const range = { form: 'range', low, high, unit: measure.unit, digits: measure.digits } as const;
  return formatMeasure(range);
}

function aboutWord(snapshot: Snapshot, line: Line, offset: number): Found | undefined {
  if ('clauses' in line && line.kind !== 'rule') {
    const clause = line.clauses.find((c) => touches(c.wordSpan, offset) && c.wordSpan.end > c.wordSpan.start);
    const docs =
      clause &&
      (line.kind === 'statement'
        ? (VERB_BY_WORD.get(line.verb.text)?.clauses[clause.word]?.docs ??
          STEP_CLAUSE_BY_WORD.get(clause.word)?.docs)
        : ENTRY_CLAUSE_BY_WORD.get(clause.word)?.docs);
    if (clause && docs !== undefined) return { text: `**${clause.word}**: ${docs}`, span: clause.wordSpan };
  }
  if (line.kind === 'if' && line.test && touches(line.code, offset) && offset > line.head.end) {
    const span = { start: line.head.end + 1, end: line.code.end };
    const docs = snapshot.say[IF_TESTS[line.test]];
    return { text: `**${snapshot.text.slice(span.start, span.end)}**: ${docs}`, span };
  }
  if (!touches(line.head, offset)) return undefined;
  const verb = line.kind === 'statement' ? VERB_BY_WORD.get(line.verb.text) : undefined;
  if (verb) {
    // What it asks of a thing depends on its kind: of those on the line, where they are known.
    const { scope } = snapshot.job();
    const kinds =
      line.kind === 'statement' ? line.items.flatMap((i) => scope.resolve(i.name.text)?.kind ?? []) : [];
    const meant = kinds.flatMap((kind) => verb.on[kind] ?? []);
    const effects = meant.length > 0 ? meant : Object.values(verb.on);
    const needs = [...new Set(effects.flatMap((effect) => effect.needs))].map((need) => `- ${NEEDS[need]}`);
    const asks = needs.length === 0 ? '' : `\n\n${snapshot.say.asksThat}\n${needs.join('\n')}`;
    return {
      text: `**${verb.word}**: ${verb.docs}${asks}\n\n\`\`\`baywright\n${verb.example}\n\`\`\``,
      span: line.head,
    };
  }
  const section = line.kind === 'section' ? SECTION_BY_WORD.get(line.word) : undefined;
  const head = section ?? HEADS.find((h) => h.word === line.head.text);
  return head && { text: `**${head.word}**: ${head.docs}`, span: line.head };
}

/** Why findings at this place matter, from the catalogue. */
async function aboutFindings(snapshot: Snapshot, offset: number, view: View): Promise<string[]> {
  const findings = snapshot.lastFindings() ?? (await view.analysed(snapshot)).findings;
  const here = [...findings, ...view.wide(snapshot)].filter(
    (f) => f.file === snapshot.path && touches(f.span, offset),
  );
  return [...new Set(here.map((f) => f.code))].map((code) => {
    const def = DIAGNOSTICS.find((d) => d.code === code);
    return def ? `**${code} ${def.name}**: ${def.why}` : `**${code}**`;
  });
}
