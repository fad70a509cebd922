// N310: words of house rules that no step can say.
import { type Finding, finding } from '../diagnostics/define.js';
import { ruleWord } from '../diagnostics/names.js';
import { linesOfKind } from '../names/job.js';
import { ANY_KIND } from '../rules/match.js';
import type { EventPattern, Name } from '../syntax/tree.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import { suggestVerbs } from '../verbs/said-for.js';
import { THING_KINDS } from '../vocabulary/kinds.js';
import { nearestWord } from '../vocabulary/near.js';
import { SIGNALS } from '../vocabulary/signals.js';
import type { Check } from './check.js';
import { nearFixes } from './near-fixes.js';

export const ruleWords: Check = ({ job: { file } }) => {
  const found: Finding[] = [];
  for (const line of linesOfKind(file, 'rule')) {
    if (line.broken) continue;
    for (const clause of line.clauses) {
      if ('pattern' in clause && clause.pattern) found.push(...patternFaults(file.path, clause.pattern));
      if (clause.word === 'while' && clause.state?.target.form === 'any')
        found.push(...kindFault(file.path, clause.state.target.kind));
    }
  }
  return found;
};

function patternFaults(file: string, { verbs, target }: EventPattern): Finding[] {
  const words = new Set<string>([...VERB_BY_WORD.keys(), ...SIGNALS, 'hold', 'wait', 'note']);
  const faults = verbs
    .filter(({ text }) => !words.has(text))
    .map((verb) => fault(file, verb, 'verb', suggestVerbs(verb.text)));
  return target?.form === 'any' ? [...faults, ...kindFault(file, target.kind)] : faults;
}

function kindFault(file: string, kind: Name): Finding[] {
  return kind.text === ANY_KIND || THING_KINDS.some((known) => known === kind.text)
    ? []
    : [fault(file, kind, 'kind', nearestWord(kind.text, THING_KINDS))];
}

function fault(
  file: string,
  { text: word, start, end }: Name,
  what: 'verb' | 'kind',
  near: readonly string[],
): Finding {
  const span = { start, end };
  return finding(ruleWord, { file, span, fixes: nearFixes(file, [span], near) }, { word, what, near });
}
