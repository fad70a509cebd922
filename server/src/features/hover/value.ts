// Help for what stands in a clause: a thread, a class or grade, a mark, a word that a thing or a vehicle declares.
import {
  type Clause,
  type Line,
  type Span,
  STARTER_MARKS,
  type Thing,
  touches,
  trade,
} from '@baywright/language';
import { declaredWordAt } from '../../declared-words.js';
import type { Snapshot } from '../../snapshot.js';

export interface Found {
  readonly text: string;
  readonly span: Span;
}

export function aboutValue(snapshot: Snapshot, line: Line, offset: number): Found | undefined {
  const clause =
    'clauses' in line && line.kind !== 'rule' ? line.clauses.find((c) => touches(c, offset)) : undefined;
  return (clause && inClause(snapshot, line, clause, offset)) ?? declaredWord(snapshot, offset);
}

function inClause(snapshot: Snapshot, line: Line, clause: Clause, offset: number): Found | undefined {
  const mark = clause.word === 'marked' ? clause.words.find((w) => touches(w, offset)) : undefined;
  if (mark) return { text: aboutMark(snapshot, mark.text), span: mark };
  const { raw } = clause;
  if (!raw || raw.hole || !touches(raw, offset)) return undefined;
  const text = aboutRaw(snapshot, line, clause, raw.text);
  return text === undefined ? undefined : { text, span: raw };
}

function aboutRaw(snapshot: Snapshot, line: Line, clause: Clause, text: string): string | undefined {
  if (clause.word === 'of') {
    const thread = trade.readThread(text);
    return trade.isThread(thread) ? aboutThread(snapshot, thread) : undefined;
  }
  if (clause.word === 'class' || clause.word === 'grade')
    return aboutClass(snapshot, line, clause.word, text);
  const standard = trade.GRADE_STANDARDS.find((word) => word === clause.word);
  if (!standard) return undefined;
  const { ok, printed, family, note, source } = trade.readGrade(standard, text);
  return ok
    ? [`**${printed}**${family === undefined ? '' : ` · ${family}`}`, note, source]
        .filter(Boolean)
        .join('  \n')
    : undefined;
}

function aboutThread({ say }: Snapshot, thread: trade.Thread): string {
  const area = thread.stressAreaMm2;
  return [
    `**${thread.designation}** · ${thread.series}`,
    say.pitch(`${figure(thread.pitchMm)} mm`),
    area === undefined ? undefined : say.stressArea(`${figure(area)} mm²`),
    trade.sourceTitle(thread.source),
  ]
    .filter((part) => part !== undefined)
    .join('  \n');
}

function aboutClass(
  { say }: Snapshot,
  line: Line,
  word: 'class' | 'grade',
  text: string,
): string | undefined {
  const cls = trade.readClass(text, word);
  if (!trade.isClass(cls)) return undefined;
  const of =
    'clauses' in line && line.kind !== 'rule' ? line.clauses.find((c) => c.word === 'of') : undefined;
  const thread = of?.raw && trade.readThread(of.raw.text);
  const strength = thread && trade.isThread(thread) ? trade.strength(cls, thread) : undefined;
  return [
    `**${cls.printed}**`,
    strength && say.strength(Math.round(strength.proofMPa), Math.round(strength.tensileMPa)),
    strength && trade.sourceTitle(strength.source),
  ]
    .filter((part) => part !== undefined)
    .join('  \n');
}

/** What a mark means to the checks, and the rules in sight that look for it. */
function aboutMark(snapshot: Snapshot, mark: string): string {
  const rules = [...snapshot.job().scope.names.values()].filter((t) => isRuleOn(snapshot, t, mark));
  return [
    `**${mark}** · ${snapshot.say.mark}`,
    STARTER_MARKS[mark],
    rules.map((rule) => `- ${rule.name}: ${rule.title}`).join('\n'),
  ]
    .filter((part) => part !== undefined && part !== '')
    .join('\n\n');
}

function isRuleOn(snapshot: Snapshot, thing: Thing, mark: string): boolean {
  if (thing.kind !== 'rule' || !thing.line) return false;
  const text = snapshot.file(thing.file)?.text.slice(thing.line.start, thing.line.end) ?? '';
  return text.split(/\bmarked\s+/).some((rest, i) => i > 0 && rest.split(/[\s,]/)[0] === mark);
}

/** A value of a condition, a position of a part, an option or one of its values: of what it is one, and the others. */
function declaredWord(snapshot: Snapshot, offset: number): Found | undefined {
  const place = declaredWordAt(snapshot, offset);
  if (!place) return undefined;
  const { word, name } = place;
  if (word.of === 'thing') {
    const { title, values } = word.thing;
    return { text: `**${word.text}** · ${title}: ${values.map((v) => v.text).join(', ')}`, span: name };
  }
  const vehicles = [...snapshot.job().scope.names.values()].filter((t) => t.kind === 'vehicle');
  const lines = vehicles.flatMap((vehicle) =>
    (vehicle.clauses.get('option') ?? []).flatMap(({ clause }) => {
      const [option = '', ...values] = clause.words.map((w) => w.text);
      return option === word.option ? [`${vehicle.title}: ${option} ${values.join(', ')}`] : [];
    }),
  );
  return { text: [`**${word.text}**`, ...lines].join('  \n'), span: name };
}

/** A table value without the noise of its binary form. */
function figure(value: number): string {
  return String(Number(value.toPrecision(4)));
}
