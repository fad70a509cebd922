// Fixes of state findings: the missing lines put where they can go, a late line moved up.
import type { Fix } from '../diagnostics/define.js';
import { isFormless, minutesOf } from '../names/figures.js';
import { hasClause, type Thing } from '../names/model.js';
import type { Line } from '../syntax/tree.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Make } from '../vocabulary/needs.js';
import type { Act } from './act.js';
import { anchorFor } from './anchor.js';
import type { Deficit, Lack } from './deficit.js';
import { facesOf, sealantOf } from './joints.js';
import type { Machine } from './machine.js';
import { whenOf } from './relations.js';
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
    edits: [
      { file: path, span: { start: to, end: to }, text: moved },
      { file: path, span: from, text: '' },
    ],
  };
}

/** Hangs a part so that what is on it can be joined before it is fitted. */
export function hangFix(m: Machine, act: Act, lacks: readonly Lack[]): Fix | undefined {
  if (act.through || act.file !== m.job.file.path) return undefined;
  const at = lineStart(m.job.file.tree.text, act.line.start);
  const names = [...new Set(lacks.map((l) => l.thing.name))];
  const text = names.map((n) => `${' '.repeat(act.line.indent)}hang ${n}\n`).join('');
  return {
    title: `Insert ${names.map((n) => `\`hang ${n}\``).join(', ')}`,
    edits: [{ file: act.file, span: { start: at, end: at }, text }],
  };
}

/** Inserts the lines that do what is missing. Undefined when no line can be found to put them at. */
export function insertFix(m: Machine, deficit: Deficit, lacks: readonly Lack[]): Fix | undefined {
  const when = whenOf(m, lacks);
  const guard = m.job.universe.guardText(m.d.and(when, m.job.universe.domain));
  const lines = missingLines(m, deficit, lacks).map((l) => (guard ? `${l}, when ${guard}` : l));
  const anchor = anchorFor(m, deficit, lacks);
  if (lines.length === 0 || !anchor || guard === undefined) return undefined;
  const { path, tree } = m.job.file;
  const at =
    anchor.side === 'before'
      ? lineStart(tree.text, anchor.line.start)
      : endOfLine(tree.text, anchor.line.end);
  const inStep = anchor.line.kind === 'perform' ? ['step: Put right', ...lines.map((l) => `  ${l}`)] : lines;
  const text = inStep.map((l) => `${' '.repeat(anchor.line.indent)}${l}\n`).join('');
  const opening = at === tree.text.length && !tree.text.endsWith('\n') ? '\n' : '';
  return {
    title: `Insert ${lines.map((l) => `\`${l}\``).join(', ')}`,
    edits: [{ file: path, span: { start: at, end: at }, text: opening + text }],
  };
}

/** The statements that bring the things to the states wanted, in an order that can be done. */
function missingLines(m: Machine, deficit: Deficit, lacks: readonly Lack[]): string[] {
  const first = lacks[0];
  if (!first || lacks.some((l) => l.want === 'slack' && takenByCount(m, l.thing))) return [];
  return directionOf(first.want) === 'apart'
    ? apartLines(m, deficit, lacks)
    : togetherLines(m, deficit, lacks);
}

/** A set that the procedure takes out in parts: how many to loosen is the writer's to say. */
function takenByCount(m: Machine, thing: Thing): boolean {
  return m.acts.some((a) => a.statement?.objects.some((o) => o.thing === thing && o.count !== undefined));
}

function togetherLines(m: Machine, deficit: Deficit, lacks: readonly Lack[]): string[] {
  const wants = new Map<Thing, Want>(
    [...deficit.also].filter(
      ([t]) => !deficit.arrived.has(t) && directionOf(deficit.also.get(t) ?? 'in') === 'together',
    ),
  );
  for (const l of lacks) wants.set(l.thing, l.want);
  const objects = new Set(deficit.act?.statement?.objects.map((o) => o.thing) ?? []);
  const of = (...asked: Want[]): Thing[] => [...wants].filter(([, w]) => asked.includes(w)).map(([t]) => t);
  const fitted = of('in', 'started').filter((t) => !objects.has(t) || lacks.some((l) => l.thing === t));
  const parts = inOrder(
    m,
    fitted.filter((t) => t.kind === 'part'),
  );
  const connections = [
    ...new Set([...of('connected'), ...fitted.filter((t) => t.kind === 'connection')]),
  ].filter((t) => !objects.has(t) || lacks.some((l) => l.thing === t));
  const fasteners = fitted.filter((t) => t.kind === 'fastener');
  const lines: string[] = [];
  if (connections.length === 0) lines.push(...inTurn(m, 'install', [...parts, ...fasteners]));
  else
    lines.push(
      ...inTurn(m, 'install', parts),
      ...statement('connect', connections),
      ...statement('install', fasteners),
    );
  // A clip that goes on holds; one that was only loosened is to be tightened.
  const torqued = [...new Set([...of('torqued'), ...fasteners.filter((t) => !isFormless(t))])].filter(
    (t) => !hasClause(t, 'no torque') && !objects.has(t) && !tightenedLater(m, deficit, t, lacks),
  );
  lines.push(
    ...statement(
      'torque',
      torqued.filter((t) => hasClause(t, 'torque')),
    ),
    ...statement(
      'tighten',
      torqued.filter((t) => !hasClause(t, 'torque')),
    ),
  );
  for (const [want, verb] of SIMPLE) for (const t of of(want)) lines.push(...simple(m, verb, t, want, lacks));
  return lines;
}

function apartLines(m: Machine, deficit: Deficit, lacks: readonly Lack[]): string[] {
  const objects = new Set(deficit.act?.statement?.objects.map((o) => o.thing) ?? []);
  const putsBack = lacks.some((l) => objects.has(l.thing));
  const wants = new Map<Thing, Want>(
    [...deficit.also].filter(([t, w]) => directionOf(w) === 'apart' && (putsBack || !objects.has(t))),
  );
  for (const l of lacks) wants.set(l.thing, l.want);
  const of = (kind: Thing['kind'], ...asked: Want[]): Thing[] =>
    [...wants].filter(([t, w]) => t.kind === kind && asked.includes(w)).map(([t]) => t);
  const before = m.asAfter((deficit.act?.index ?? m.acts.length) - 1);
  const hangs = (t: Thing): boolean =>
    m.job
      .inverse(t, 'on')
      .some((r) => r.of.kind === 'connection' && !wants.has(r.of) && isConnected(before, r.of, r.when));
  const parts = inOrder(m, of('part', 'off')).reverse();
  return [
    ...statement('loosen', of('fastener', 'slack')),
    ...of('connection', 'off', 'disconnected').flatMap((t) => statement('disconnect', [t])),
    ...demanded(m, 'remove', [
      ...of('fastener', 'off'),
      ...parts.filter((t) => !hangs(t)),
      ...of('temporary', 'off'),
    ]),
    ...parts.filter(hangs).flatMap((t) => statement('hang', [t])),
    ...of('fluid', 'drained').flatMap((t) => [
      ...statement('loosen', drainBolts(m, deficit, t)),
      ...statement('drain', [t]),
    ]),
  ];
}

/** Whether a plug or hose is on anywhere, so that what it sits on can only be hung. */
const isConnected = (m: Machine, connection: Thing, when: Condition): boolean =>
  m.d.and(
    when,
    m.where(connection, 'link', (v) => v === 'connected'),
  ) !== NEVER;

function statement(verb: string, things: readonly Thing[]): string[] {
  return things.length > 0 ? [`${verb} ${things.map((t) => t.name).join(', ')}`] : [];
}

/** A statement with the clauses that house rules ask of it; what a rule asks for stands on a line of its own, behind the rest. */
function demanded(m: Machine, verb: string, things: readonly Thing[]): string[] {
  const isPlain = (t: Thing): boolean => demandOf(m, verb, t) === '';
  return inTurn(m, verb, [...things.filter(isPlain), ...things.filter((t) => !isPlain(t))]);
}

/** The same in the order of the things. */
function inTurn(m: Machine, verb: string, things: readonly Thing[]): string[] {
  const lines: { readonly names: string[]; readonly clause: string }[] = [];
  for (const thing of things) {
    const clause = demandOf(m, verb, thing);
    const last = lines.at(-1);
    if (last && clause === '' && last.clause === '') last.names.push(thing.name);
    else lines.push({ names: [thing.name], clause });
  }
  return lines.map(({ names, clause }) => [verb, names.join(', '), clause].filter((w) => w !== '').join(' '));
}

const demandOf = (m: Machine, verb: string, thing: Thing): string =>
  m.demands
    .map((d) => d(verb, thing))
    .filter((c) => c !== undefined)
    .join(' ');

/** Whether lines behind the act that needs the joint tighten the thing anyway, wherever it lacks. */
function tightenedLater(m: Machine, { act }: Deficit, thing: Thing, lacks: readonly Lack[]): boolean {
  if (act === undefined) return false;
  const makes = ({ statement }: Act): readonly Make[] =>
    statement?.objects.some((o) => o.thing === thing) ? (statement.verb.on.fastener?.makes ?? []) : [];
  const behind = m.acts.slice(act.index + 1);
  // What is tightened after it was loosened again is another turn.
  const loosened = behind.findIndex((a) => makes(a).some((x) => x === 'out' || x === 'loose'));
  const later = (loosened < 0 ? behind : behind.slice(0, loosened))
    .filter((a) => makes(a).some((x) => x === 'torqued' || x === 'tight'))
    .reduce((c, a) => m.d.or(c, a.when), NEVER);
  return m.d.implies(lacks.find((l) => l.thing === thing)?.when ?? act.when, later);
}

const SIMPLE: readonly (readonly [Want, string])[] = [
  ['snug', 'snug'],
  ['fluid', 'fill'],
  ['bled', 'bleed'],
  ['levelled', 'check-level'],
  ['set', 'set'],
  ['position', 'move'],
  ['adjusted', 'adjust'],
  ['gone', 'remove'],
  ['unchocked', 'unchock'],
  ['chocked', 'chock'],
  ['untagged', 'untag'],
  ['tagged', 'tag'],
  ['untied', 'untie'],
  ['tied', 'tie'],
  ['back on ground', 'lower'],
  ['placed', 'place'],
  ['clean', 'clean'],
  ['suspension free', 'unload'],
  ['suspension loaded', 'load'],
  ['supported', 'support'],
  ['up', 'raise'],
  ['stage', 'torque'],
  ['cured', 'wait'],
  ['settled', 'wait'],
  ['wet', 'apply'],
];

function simple(m: Machine, verb: string, thing: Thing, want: Want, lacks: readonly Lack[]): string[] {
  const value = lacks.find((l) => l.thing === thing)?.value ?? thing.values[0]?.text ?? '';
  if (want === 'fluid' && hasClause(thing, 'refrigerant')) return [`charge ${thing.name}`];
  if (want === 'set') return [`set ${thing.name} ${value}`];
  if (want === 'position') return [`move ${thing.name} to ${value}`];
  if (want === 'stage') return [`${verb} ${thing.name}, stage ${value}`];
  if (want === 'cured' || want === 'settled') return [`${verb} ${waitText(Number(value))}`];
  if (want === 'wet') return sealingLines(m, thing);
  if (want === 'bled' && isEvacuated(m, thing)) return [`evacuate ${thing.name}`];
  const settle = want === 'levelled' ? minutesOf(thing, 'settle') : undefined;
  const screws = want === 'bled' ? m.job.relations(thing, 'bleed at').map((r) => r.target.name) : [];
  return [
    ...(settle === undefined ? [] : [`wait ${settle} min`]),
    `${verb} ${thing.name}${screws.length > 0 ? ` at ${screws.join(', ')}` : ''}`,
  ];
}

/** Air is drawn out of a circuit of refrigerant, where it is bled out of one of fluid. */
export function isEvacuated({ job }: Machine, circuit: Thing): boolean {
  return job.relations(circuit, 'uses').some(({ target }) => hasClause(target, 'refrigerant'));
}

function waitText(minutes: number): string {
  return minutes >= 60 && minutes % 60 === 0 ? `${minutes / 60} h` : `${Math.ceil(minutes)} min`;
}

/** Cleans the faces of a part's joint and wets them. */
function sealingLines(m: Machine, part: Thing): string[] {
  const sealant = sealantOf(m.job, part);
  const faces = facesOf(m.job, part);
  if (!sealant || faces.length === 0) return [];
  const dirty = faces.filter((f) => m.where(f, 'clean', (v) => v !== 'clean') !== NEVER);
  return [...statement('clean', dirty), `apply ${sealant.name} to ${faces.map((f) => f.name).join(', ')}`];
}

function loosenedBefore(m: Machine, deficit: Deficit, bolt: Thing): boolean {
  return m.acts
    .slice(0, deficit.act?.index)
    .some((a) =>
      a.statement?.objects.some(
        (o) =>
          o.thing === bolt &&
          (a.statement?.verb.on.fastener?.makes ?? []).some((x) => x === 'loose' || x === 'out'),
      ),
    );
}

/** The bolts in the act's own line that hold the part the fluid drains at: slack, they let it out. */
function drainBolts(m: Machine, deficit: Deficit, fluid: Thing): Thing[] {
  const objects = deficit.act?.statement?.objects.map((o) => o.thing) ?? [];
  return m.job
    .relations(fluid, 'drain at')
    .flatMap((r) => m.job.relations(r.target, 'held by').map((h) => h.target))
    .filter((t) => t.kind === 'fastener' && objects.includes(t) && !loosenedBefore(m, deficit, t));
}

/** Parts in an order in which what sits behind another goes on first. */
function inOrder(m: Machine, parts: readonly Thing[]): Thing[] {
  const out: Thing[] = [];
  const visit = (part: Thing, seen: ReadonlySet<Thing>): void => {
    if (out.includes(part) || seen.has(part)) return;
    for (const r of m.job.inverse(part, 'behind'))
      if (parts.includes(r.of)) visit(r.of, new Set([...seen, part]));
    for (const r of m.job.inverse(part, 'in'))
      if (parts.includes(r.of)) visit(r.of, new Set([...seen, part]));
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
  return block
    .split('\n')
    .map((l) =>
      l.trim() === ''
        ? l
        : ' '.repeat(Math.max(0, l.length - l.trimStart().length - from + to)) + l.trimStart(),
    )
    .join('\n');
}
