// Tells that a rule is broken: once in a step, with what is missing in the rule's own words.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { houseRule } from '../diagnostics/s403-house-rule.js';
import { usualPractice } from '../diagnostics/s404-usual-practice.js';
import { isWithoutEnd } from '../names/draft.js';
import type { Thing } from '../names/model.js';
import type { Act } from '../state/act.js';
import type { Machine } from '../state/machine.js';
import type { StepLine } from '../syntax/tree.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Rule } from './rule-model.js';

interface Broken {
  readonly act: Act;
  readonly when: Condition;
  /** What is missing, in the rule's own words. */
  readonly missing: string;
  /** What it asks to have something done to, or what is in the state that it forbids. */
  readonly things: readonly Thing[];
  /** Other lines that have to do with it, with what they did. */
  readonly others?: readonly (readonly [Act, string])[];
  /** The outcomes that lead there, when the run has forgotten them. */
  readonly path?: string | undefined;
  /** It was owed until the work was over, or until the end of its last step. */
  readonly isOwedLast?: boolean;
  /** Asked for when the run is over and all acts are known. */
  readonly fix?: () => Fix | undefined;
}

/** A breach, to be made a finding once the run is over. */
export interface Told {
  readonly things: readonly Thing[];
  /** Undefined where a finding at another line says it better. */
  finding(): Finding | undefined;
}

export interface Teller {
  tell(broken: Broken): void;
}

export function tellerOf(m: Machine, rule: Rule, found: Told[]): Teller {
  const told = new Set<StepLine | undefined>();
  return {
    tell({ act, when, missing, things, others = [], path, isOwedLast = false, fix }) {
      if (when === NEVER || told.has(act.step)) return;
      told.add(act.step);
      const { thing, starter } = rule;
      const related = others
        .filter(([a]) => a !== act && a.blame.span.start !== act.blame.span.start)
        .map(([a, message]) => ({ ...a.blame, message }));
      if (thing.line && !starter)
        related.push({ file: thing.file, span: thing.line.code, message: 'the rule' });
      const variants = path ?? m.job.universe.words(when);
      found.push({
        things,
        finding() {
          const fixes = [fix?.()].filter((f) => f !== undefined);
          if (fixes.some((f) => isHalfSaid(m, act, f))) return undefined;
          const broken = finding(
            starter ? usualPractice : houseRule,
            { ...act.blame, related, fixes, variants },
            { rule: thing.name, title: thing.title.replace(/[.。]$/u, ''), missing },
          );
          // What is owed at the end may well come in the completion.
          return isOwedLast && isWithoutEnd(m.job.file) ? { ...broken, severity: 'question' } : broken;
        },
      });
    },
  };
}

/** Whether a line above says what the fix would insert, but not of what, or of what nothing declares: that is told there. */
function isHalfSaid(m: Machine, { index }: Act, { edits }: Fix): boolean {
  const [verb] = edits[0]?.text.trim().split(' ') ?? [];
  return m.acts.slice(0, index).some(({ statement }) => {
    if (!statement || statement.verb.word !== verb) return false;
    const { objects } = statement;
    return statement.verb.object === 'one or more' && !(objects.length > 0 && objects.every((o) => o.thing));
  });
}
