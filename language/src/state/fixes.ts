// Fixes of state findings: the missing lines put where they can go, a late line moved up.
import type { Fix } from '../diagnostics/define.js';
import { isFormless } from '../names/figures.js';
import { hasClause, type Thing } from '../names/model.js';
import type { Line } from '../syntax/tree.js';
import type { Act } from './act.js';
import type { Deficit, Lack } from './deficit.js';
import type { Machine } from './machine.js';
import { directionOf, type Want } from './wants.js';

/** Moves a whole line that came too late to just before the act that needed it. Not through `perform`. */
export function moveFix(m: Machine, late: Act, before: Act): Fix | undefined {
  const { path, tree } = m.job.file;
  if (late.through || before.through || late.file !== path || before.file !== path) return undefined;
  const { text } = tree;
  const from = wholeLines(text, late.line);
  const to = lineStart(text, before.line.start);
  const moved = reindent(text.slice(from.start, from.end), late.line.indent, before.line.indent);
  return {
    title: `Move \`${text.slice(late.line.code.start, late.line.code.end)}\` up to here`,
    edits: [{ file: path, span: { start: to, end: to }, text: moved }, { file: path, span: from, text: '' }],
  };
}

/** Inserts the lines that do what is missing: before the act that needs it, or at the end of the work. */
export function insertFix(m: Machine, deficit: Deficit, lacks: readonly Lack[]): Fix | undefined {
  const { path, tree } = m.job.file;
  const lines = missingLines(m, deficit, lacks);
  if (lines.length === 0) return undefined;
  const act = deficit.act;
  if (act && !act.through && act.file === path) {
    const at = lineStart(tree.text, act.line.start);
    return insertion(path, at, lines, act.line.indent);
  }
  if (act?.through) {
    const at = lineStart(tree.text, act.through.start);
    const indent = act.through.indent;
    return insertion(path, at, [`step: Put back`, ...lines.map((l) => `  ${l}`)], indent);
  }
  const anchor = anchorFor(m, lacks);
  return anchor ? insertion(path, endOfLine(tree.text, anchor.end), lines, anchor.indent) : undefined;
}

function insertion(file: string, at: number, lines: readonly string[], indent: number): Fix {
  const text = lines.map((l) => `${' '.repeat(indent)}${l}\n`).join('');
  return { title: `Insert ${lines.map((l) => `\`${l.trim()}\``).join(', ')}`, edits: [{ file, span: { start: at, end: at }, text }] };
}

/** A torque goes right behind the line that fitted the thing; all else at the end of the last step of its phase. */
function anchorFor(m: Machine, lacks: readonly Lack[]): Line | undefined {
  const work = m.job.file.work;
  const maker = m.acts[Math.max(...lacks.map((l) => l.maker))];
  if (lacks.every((l) => l.want === 'torqued') && maker && !maker.through && maker.file === m.job.file.path) return maker.line;
  const wants = new Set(lacks.map((l) => l.want));
  const phase = wants.has('in') || wants.has('connected') ? (work.find((s) => s.word === 'installation') ?? work.at(-1)) : work.at(-1);
  const step = phase?.children.filter((l) => l.kind === 'step').at(-1);
  return step?.children.filter((l) => l.kind === 'statement' || l.kind === 'when' || l.kind === 'text').at(-1);
}

const APART_VERB: Readonly<Record<string, string>> = { part: 'remove', fastener: 'remove', connection: 'disconnect', temporary: 'remove' };

/** The statements that bring the things to the states wanted. */
function missingLines(m: Machine, deficit: Deficit, lacks: readonly Lack[]): string[] {
  const lines: string[] = [];
  const of = (...wants: Want[]): Thing[] => [...new Set(lacks.filter((l) => wants.includes(l.want)).map((l) => l.thing))];
  const together = lacks.some((l) => directionOf(l.want) === 'together');
  const also = together ? [...deficit.also].filter((t) => !deficit.arrived.has(t)) : [];
  const fitted = [...new Set([...of('in', 'started'), ...also])];
  const parts = order(m, fitted.filter((t) => t.kind === 'part'));
  const fasteners = fitted.filter((t) => t.kind === 'fastener');
  const out = [...parts, ...fasteners];
  if (out.length > 0) lines.push(`install ${out.map((t) => t.name).join(', ')}`);
  const connected = [...new Set([...of('connected'), ...fitted.filter((t) => t.kind === 'connection')])];
  if (connected.length > 0) lines.push(`connect ${connected.map((t) => t.name).join(', ')}`);
  const done = new Set(deficit.act?.statement?.objects.map((o) => o.thing) ?? []);
  const torqued = [...new Set([...of('torqued'), ...fasteners])].filter((t) => !isFormless(t) && !hasClause(t, 'no torque') && !done.has(t));
  const byTorque = torqued.filter((t) => hasClause(t, 'torque'));
  if (byTorque.length > 0) lines.push(`torque ${byTorque.map((t) => t.name).join(', ')}`);
  const byHand = torqued.filter((t) => !hasClause(t, 'torque'));
  if (byHand.length > 0) lines.push(`tighten ${byHand.map((t) => t.name).join(', ')}`);
  for (const [want, verb] of SIMPLE) for (const t of of(want)) lines.push(`${verb} ${t.name}${want === 'set' ? ` ${valueOf(lacks, t)}` : want === 'position' ? ` to ${valueOf(lacks, t)}` : ''}`);
  const apart = of('off', 'disconnected', 'slack');
  for (const t of apart) {
    const verb = lacks.find((l) => l.thing === t)?.want === 'slack' ? 'loosen' : (APART_VERB[t.kind] ?? 'remove');
    lines.push(`${verb} ${[...(t.kind === 'part' ? holdersOf(m, t) : []), t].map((x) => x.name).join(', ')}`);
  }
  return lines;
}

const SIMPLE: readonly (readonly [Want, string])[] = [
  ['snug', 'snug'], ['fluid', 'fill'], ['bled', 'bleed'], ['levelled', 'check-level'], ['set', 'set'], ['position', 'move'], ['adjusted', 'adjust'],
  ['gone', 'remove'], ['unchocked', 'unchock'], ['chocked', 'chock'], ['back on ground', 'lower'], ['placed', 'place'], ['clean', 'clean'], ['drained', 'drain'],
];

function valueOf(lacks: readonly Lack[], thing: Thing): string {
  return lacks.find((l) => l.thing === thing)?.value ?? thing.values[0]?.text ?? '';
}

function holdersOf(m: Machine, part: Thing): Thing[] {
  return m.job.relations(part, 'held by').map((r) => r.target).filter((t) => t.kind === 'fastener');
}

/** Parts in an order in which what sits behind another goes on first. */
function order(m: Machine, parts: readonly Thing[]): Thing[] {
  const out: Thing[] = [];
  const visit = (part: Thing, seen: ReadonlySet<Thing>): void => {
    if (out.includes(part) || seen.has(part)) return;
    for (const r of m.job.inverse(part, 'behind')) if (parts.includes(r.of)) visit(r.of, new Set([...seen, part]));
    out.push(part);
  };
  for (const part of parts) visit(part, new Set());
  return out;
}

function lineStart(text: string, offset: number): number {
  return text.lastIndexOf('\n', offset - 1) + 1;
}

function endOfLine(text: string, offset: number): number {
  const end = text.indexOf('\n', offset);
  return end < 0 ? text.length : end + 1;
}

function wholeLines(text: string, line: Line): { start: number; end: number } {
  return { start: lineStart(text, line.start), end: endOfLine(text, line.end) };
}

function reindent(block: string, from: number, to: number): string {
  if (from === to) return block;
  return block.split('\n').map((l) => (l.trim() === '' ? l : ' '.repeat(Math.max(0, l.length - l.trimStart().length - from + to)) + l.trimStart())).join('\n');
}
