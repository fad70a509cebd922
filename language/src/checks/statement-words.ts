// N203, N204, N208, N209, N210, N213: whether a statement has what its verb takes, and no more.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import {
  clauseForm,
  clauseMissing,
  clauseNotForVerb,
  countNotTaken,
  objectMissing,
  objectNotTaken,
} from '../diagnostics/names.js';
import { tighteningCount } from '../names/figures.js';
import type { Job } from '../names/job.js';
import { clausesOf } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import type { AmountNode, Clause } from '../syntax/tree.js';
import { once } from '../text/once.js';
import type { Span } from '../text/span.js';
import { SAID_FOR } from '../verbs/said-for.js';
import type { ClauseSlot, VerbDef } from '../vocabulary/verb.js';
import type { Check } from './check.js';
import { manyOf } from './kind-words.js';
import { kindsOn } from './name-uses.js';
import { insertClause, workStatements } from './own-lines.js';

export const statementWords: Check = ({ job }) =>
  workStatements(job).flatMap(({ statement }) => faultsOf(statement, job));

function faultsOf(statement: BoundStatement, job: Job): Finding[] {
  const { verb, line, clauses, file, objects } = statement;
  const at = (span: Span, fixes: readonly Fix[] = []) => ({
    file,
    span: { start: span.start, end: span.end },
    fixes,
  });
  const [object] = line.items;
  if (verb.object === 'none' && object) {
    const last = line.items.at(-1) ?? object;
    return [
      finding(objectNotTaken, at({ start: object.start, end: last.end }), {
        verb: verb.word,
        name: object.name.text,
      }),
    ];
  }
  if (verb.object === 'one or more' && !object) {
    // `remove 6 bolts`: what stands there as a unit is what is meant.
    if (statement.clause('bare')?.spec?.stages.some(({ measure }) => measure.amounts.some(isNoUnit)))
      return [];
    const particle = particleMeant(statement);
    const { meant } = particle;
    const fixes = meant === undefined ? machineMeant(statement) : particle.fixes;
    return [
      finding(objectMissing, at(line.verb, fixes), { verb: verb.word, takes: manyOf(kindsOn(verb)), meant }),
    ];
  }
  const found: Finding[] = [];
  for (const item of line.items) {
    if (!item.count || verb.takesCount === true) continue;
    // More than there are is a fault of its own.
    const isTooMany = objects.some(
      (each) => each.item === item && each.thing && (each.count ?? 0) > tighteningCount(each.thing),
    );
    if (!isTooMany) {
      const span = { start: item.count.start, end: item.name.start };
      const fix: Fix = { title: 'Take the count out', edits: [{ file, span, text: '' }], preferred: true };
      found.push(
        finding(countNotTaken, at({ start: span.start, end: item.name.start - 1 }, [fix]), {
          verb: verb.word,
        }),
      );
    }
  }
  let isSaidOtherwise = false;
  // A verb of another kind of thing has other clauses as well: that it does not fit is told at the name.
  const isOtherVerb = objects.some(
    ({ thing }) => thing && thing.kind !== 'machine' && verb.on[thing.kind] === undefined,
  );
  for (const clause of clauses) {
    const slot = slotOf(statement, clause);
    if (!slot && isOtherVerb && clause.word !== 'side') continue;
    if (clause.word === 'side') found.push(sideAsGuard(statement, clause));
    else if (!slot) {
      const bare = bareFix(statement, clause);
      isSaidOtherwise ||= bare.length > 0;
      const fixes = [...bare, ...limitFix(statement, clause, job), ...textFix(statement, clause, job)];
      found.push(
        finding(clauseNotForVerb, at(isBare(clause) ? clause : clause.wordSpan, fixes), {
          verb: verb.word,
          clause: saidAs(clause),
          takes: takenBy(statement),
          limit: limitIn(statement, clause),
        }),
      );
    } else found.push(...formFaults(statement, clause, slot, job));
  }
  for (const [word, slot] of requiredBy(verb)) {
    if (clauses.some((clause) => (word === 'bare' ? isBare(clause) : clause.word === word))) continue;
    if (word === 'bare' && isSaidOtherwise) continue;
    const said = word === 'bare' ? (slot.quantity?.[0] ?? 'amount') : word;
    found.push(
      finding(clauseMissing, at(line.verb, [askFix(statement, word)]), {
        verb: verb.word,
        clause: `\`${said}\``,
      }),
    );
  }
  return found;
}

/** `plug in sensor` means `connect sensor`: a verb with a word behind it that is read as a clause. */
function particleMeant({ verb, line, clauses, file }: BoundStatement): { meant?: string; fixes: Fix[] } {
  const [clause] = clauses;
  const [thing] = clause?.items ?? [];
  const other = clause && SAID_FOR.get(`${verb.word}-${clause.word}`);
  if (!clause || !thing || other === undefined) return { fixes: [] };
  const span = { start: line.verb.start, end: thing.start };
  const meant = `${other} ${thing.name.text}`;
  return { meant, fixes: [{ title: `Write \`${meant}\``, edits: [{ file, span, text: `${other} ` }] }] };
}

/** `support on stands` may mean the vehicle, where the verb acts on one machine. */
function machineMeant({ verb, line, file }: BoundStatement): Fix[] {
  const [machine, ...others] = verb.machines ?? [];
  if (machine === undefined || others.length > 0) return [];
  const { end } = line.verb;
  return [
    {
      title: `Write \`${verb.word} ${machine}\``,
      edits: [{ file, span: { start: end, end }, text: ` ${machine}` }],
    },
  ];
}

/** The clauses a verb cannot do without. */
const requiredBy = once((verb: VerbDef): readonly (readonly [string, ClauseSlot])[] =>
  [['bare', verb.bare] as const, ...Object.entries(verb.clauses)].flatMap(([word, slot]) =>
    slot?.required ? [[word, slot] as const] : [],
  ),
);

/** `side left` behind a statement would leave the other side undone and is meant as a guard. */
function sideAsGuard({ verb, file }: BoundStatement, clause: Clause): Finding {
  const side = clause.words[0]?.text ?? '?';
  const span = { start: clause.start, end: clause.end };
  const guard = `when side ${side}`;
  const fixes: Fix[] = [
    { title: `Write \`${guard}\``, edits: [{ file, span, text: guard }], preferred: true },
  ];
  return finding(
    clauseNotForVerb,
    { file, span, fixes },
    { verb: verb.word, clause: '`side`', takes: [], guard },
  );
}

/** `run engine, for 5 min` to `run engine, 5 min`: the figure that the verb takes without a word. */
function bareFix({ verb, line, file, clauses }: BoundStatement, clause: Clause): Fix[] {
  const { spec } = clause;
  const kind = spec?.stages[0]?.measure.measure?.unit.kind;
  if (!spec || kind === undefined || isBare(clause) || clauses.some(isBare)) return [];
  if (verb.bare?.quantity?.includes(kind) !== true) return [];
  const last = line.items.at(-1)?.end ?? line.verb.end;
  if (clause.start < last || clauses[0] !== clause) return [];
  const text = line.items.length > 0 ? ', ' : ' ';
  return [
    {
      title: `Take \`${clause.word}\` out`,
      edits: [{ file, span: { start: last, end: spec.start }, text }],
      preferred: true,
    },
  ];
}

const isNoUnit = ({ unit }: AmountNode): boolean =>
  unit !== undefined && unit.unit === undefined && unit.readings.length === 0;

/** The limit that the values behind `measure` belong to, and the values as they are written. */
function limitIn(
  { verb, line }: BoundStatement,
  clause: Clause,
): { readonly name: string; readonly values: string } | undefined {
  const name = line.items[0]?.name.text;
  if (verb.word !== 'measure' || !isBare(clause) || name === undefined) return undefined;
  const values = line.tokens.filter((token) => token.start >= clause.start && token.end <= clause.end);
  return { name, values: values.map((token) => token.image).join(' ') };
}

/** Moves the values to the limit where its entry has none, or takes them out where it has the same. */
function limitFix(statement: BoundStatement, clause: Clause, job: Job): Fix[] {
  const { line, file, objects } = statement;
  const said = limitIn(statement, clause);
  const thing = objects[0]?.thing;
  if (!said || thing?.kind !== 'limit' || thing.file !== file || !thing.line || objects.length > 1) return [];
  const known = ['bare', 'at least', 'at most'].flatMap((word) => clausesOf(thing, word));
  const { text } = job.file.tree;
  const isSame = known.some((each) => text.slice(each.clause.start, each.clause.end) === said.values);
  if (known.length > 0 && !isSame) return [];
  const out = { file, span: { start: line.items.at(-1)?.end ?? line.verb.end, end: clause.end }, text: '' };
  if (isSame) return [{ title: 'Take the values out', edits: [out], preferred: true }];
  const moved = insertClause(job, thing.line, said.values);
  return [{ title: `Write \`${said.values}\` below \`${said.name}\``, edits: [moved, out], preferred: true }];
}

/** `remove hub on bench` to `remove hub: On bench`: how it is done, where no clause of the verb says it. */
function textFix({ line, file, clauses }: BoundStatement, clause: Clause, job: Job): Fix[] {
  if (isBare(clause) || clause.items.length === 0 || clauses.at(-1) !== clause) return [];
  if (line.prose || line.guard || clause.end > line.code.end) return [];
  const said = job.file.tree.text.slice(clause.start, clause.end);
  const ahead = clauses[clauses.length - 2] ?? line.items.at(-1) ?? line.verb;
  const span = { start: ahead.end, end: clause.end };
  if (clause.start < span.start) return [];
  const text = `: ${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
  return [{ title: 'Make it text', edits: [{ file, span, text }] }];
}

function formFaults(statement: BoundStatement, clause: Clause, slot: ClauseSlot, job: Job): Finding[] {
  const { verb, file } = statement;
  const [item] = clause.items;
  const clauseWord = isBare(clause) ? 'the figure' : clause.word;
  if (item && slot.quantity && !slot.names) {
    return [
      finding(
        clauseForm,
        { file, span: { start: item.start, end: item.end }, fixes: textFix(statement, clause, job) },
        {
          clause: clauseWord,
          verb: verb.word,
          expected: `a ${slot.quantity.join(' or a ')}`,
          isFigure: true,
        },
      ),
    ];
  }
  const measured = clause.spec?.stages.some(({ measure }) => !measure.hole);
  if (measured && clause.spec && slot.names && !slot.quantity) {
    return [
      finding(
        clauseForm,
        { file, span: { start: clause.spec.start, end: clause.spec.end } },
        { clause: clauseWord, verb: verb.word, expected: manyOf(slot.names) },
      ),
    ];
  }
  return [];
}

/** `at least 2 bar` behind a verb is a figure that stands alone. */
function isBare(clause: Clause): boolean {
  return clause.word === 'bare' || clause.word === 'at least' || clause.word === 'at most';
}

function slotOf({ verb }: BoundStatement, clause: Clause): ClauseSlot | undefined {
  return isBare(clause) ? verb.bare : verb.clauses[clause.word];
}

function saidAs(clause: Clause): string {
  if (isBare(clause)) return 'figure';
  return `\`${clause.word}\``;
}

/** What the verb does take, in words. */
function takenBy({ verb }: BoundStatement): string[] {
  return [...(verb.bare ? ['a figure'] : []), ...Object.keys(verb.clauses).map((word) => `\`${word}\``)];
}

/** Puts a hole where the clause goes. */
function askFix({ line, file }: BoundStatement, word: string): Fix {
  const last = line.items.at(-1)?.end ?? line.verb.end;
  const text = word === 'bare' ? `${line.items.length > 0 ? ',' : ''} ?` : ` ${word} ?`;
  return {
    title: `Leave it open: \`${text.trim()}\``,
    edits: [{ file, span: { start: last, end: last }, text }],
  };
}
