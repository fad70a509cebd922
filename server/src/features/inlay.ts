// Inlay hints: the other unit system, figures of a joint, count and head of fasteners, new parts. One master switch.
import {
  clausesOf,
  countKnown,
  hasClause,
  type Line,
  mentionsOf,
  type Scope,
  type Span,
  scopeOf,
  threadText,
  tighteningCount,
  walkLines,
} from '@baywright/language';
import { type InlayHint, InlayHintKind, type InlayHintParams } from 'vscode-languageserver';
import type { Snapshot } from '../snapshot.js';
import { documentFeature } from './feature.js';
import { figuresAt, inWords, torqueOf } from './hover/joint.js';
import { HEAD_SIZES, measuresOf, otherForm } from './quantities.js';

export const inlay = documentFeature<InlayHintParams>(
  'textDocument/inlayHint',
  { inlayHintProvider: true },
  (snapshot, { range }): InlayHint[] => {
    const { inlay: wanted } = snapshot.options;
    if (!wanted.enabled) return [];
    const within = snapshot.positions.span(range);
    const model = snapshot.library.model(snapshot.path);
    if (!model) return [];
    const scope = scopeOf(model, snapshot.library);
    const hints: InlayHint[] = [];
    const add = (at: number, label: string): void => {
      hints.push({
        position: snapshot.positions.position(at),
        label,
        kind: InlayHintKind.Parameter,
        paddingLeft: true,
      });
    };
    walkLines(snapshot.tree, (line) => {
      if (line.end < within.start || line.start > within.end) return false;
      if (wanted.secondUnits) for (const node of measuresOf(line, HEAD_SIZES)) addUnit(node, add);
      if (wanted.jointFigures) addJoint(snapshot, scope, line, add);
      if (line.kind === 'statement') addThings(snapshot, scope, line, add);
      return undefined;
    });
    return hints.filter((h) => inside(within, snapshot.positions.offset(h.position)));
  },
);

type Add = (at: number, label: string) => void;

function addUnit(node: Parameters<typeof otherForm>[0], add: Add): void {
  const other = otherForm(node);
  if (other !== undefined) add(node.end, other);
}

function addJoint(snapshot: Snapshot, scope: Scope, line: Line, add: Add): void {
  const torque = torqueOf(line);
  const figures = torque && figuresAt(snapshot, scope, torque);
  const words = figures && inWords(figures, snapshot.say);
  if (torque && words !== undefined) add(torque.end, words);
}

function addThings(snapshot: Snapshot, scope: Scope, line: Line, add: Add): void {
  const { fasteners, renewed } = snapshot.options.inlay;
  if (!fasteners && !renewed) return;
  for (const m of mentionsOf(line)) {
    const thing = m.way === 'acts on' ? scope.resolve(m.name.text) : undefined;
    if (!thing) continue;
    const head = clausesOf(thing, 'hex')[0]?.clause;
    const set =
      fasteners && thing.kind === 'fastener' && countKnown(thing)
        ? [
            `${tighteningCount(thing)}×${head ? ` ${textOf(snapshot, thing.file, head)}` : ` ${threadText(thing)?.text ?? ''}`}`.trim(),
          ]
        : [];
    const fresh = renewed && m.verb === 'install' && hasClause(thing, 'renew') ? [snapshot.say.fresh] : [];
    const label = [...set, ...fresh].join(', ');
    if (label !== '') add(m.name.end, label);
  }
}

function textOf(snapshot: Snapshot, path: string, span: Span): string {
  return snapshot.file(path)?.text.slice(span.start, span.end) ?? '';
}

function inside(span: Span, offset: number): boolean {
  return offset >= span.start && offset <= span.end;
}
