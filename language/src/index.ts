// The one door of the language: what the compiler, the server and the tests may use.
export * from './analysis.js';
export { acceptedIn } from './checks/accept.js';
export { kindFromUses } from './checks/declare.js';
export { type DialSetting, dialSettings, type NoSetting } from './checks/dial-setting.js';
export { classesOf, lubricationOf, stageTorques, threadOf } from './checks/fastener-facts.js';
export { findingsOfParts, type LibraryPart, libraryFindings, partOf } from './checks/library-wide.js';
export * from './diagnostics/define.js';
export { findingFile } from './diagnostics/finding-file.js';
export { DIAGNOSTICS } from './diagnostics/index.js';
export { FASTENER_IDENTITY, guardText as guardWritten } from './format/clause-text.js';
export { type Formatted, format, formatRange, sameMeaning } from './format/index.js';
export type { Analysis, Library, LibraryHost } from './library.js';
export {
  countKnown,
  hoursOf,
  isFormless,
  isThreadless,
  minutes as writtenMinutes,
  minutesOf,
  threadText,
  tighteningCount,
  torqueLines,
} from './names/figures.js';
export { allThings, everyLine, type Job, jobOf, type Relation, resolve, yearsOf } from './names/job.js';
export { isApart, type Mention, type MentionWay, mentionsIn, mentionsOf } from './names/mentions.js';
export {
  clausesOf,
  type FileModel,
  hasClause,
  isEachSide,
  nameSpan,
  type Thing,
  type ThingClause,
} from './names/model.js';
export { type Before, removalOrder } from './names/removal-order.js';
export { type Clash, resolvePath, type Scope, scopeOf } from './names/scope.js';
export { type BoundItem, type BoundStatement, bindStatement } from './names/statement.js';
export { type Wear, wearOf } from './names/wear.js';
export * from './quantity/index.js';
export { findingPage } from './reference/findings.js';
export { monthsLater } from './register/days.js';
export * from './register/index.js';
export { type BanInForce, bansInForce } from './rules/bans-in-force.js';
export { starterRules } from './rules/starter.js';
export { STARTER_MARKS } from './rules/starter-marks.js';
export { stateWords } from './rules/state-words.js';
export * from './settings/index.js';
export type { Act } from './state/act.js';
export { type CanDo, canDo } from './state/can-do.js';
export { decode as decodeCounts, size as sizeOfCounts } from './state/counts.js';
export { type ClockWord, detailText, type StateDetail } from './state/detail-words.js';
export { fittingEdits, fittingText } from './state/fitting-edits.js';
export { type FittingHalf, fittingHalf } from './state/fitting-half.js';
export type { FittingStep } from './state/fitting-steps.js';
export { type DeclaredLabour, declaredLabour, type JobTime, jobTime } from './state/job-time.js';
export { sealantOf } from './state/joints.js';
export { type OperationSummary, operationSummary, type ThingState } from './state/operation-summary.js';
export type { StateRun } from './state/run.js';
export {
  type Chosen,
  chosenCondition,
  lastActBefore,
  STATE_GROUPS,
  type StateFact,
  type StateGroup,
  stateAt,
} from './state/state-at.js';
export * from './syntax/index.js';
export { namesOf as namesOnLine } from './syntax/walk.js';
export { type Difference, difference } from './text/difference.js';
export * from './text/line-index.js';
export * from './text/span.js';
export { wholeLines } from './text/whole-lines.js';
export * as trade from './trade/index.js';
export { type Condition, NEVER } from './variants/diagrams.js';
export { VERB_BY_WORD, VERBS } from './verbs/index.js';
export { suggestVerbs, verbMeant, wordsFor } from './verbs/said-for.js';
export { VERSION } from './version.js';
export {
  type ClauseDef,
  ENTRY_CLAUSE_BY_WORD,
  ENTRY_CLAUSES,
  STEP_CLAUSE_BY_WORD,
  STEP_CLAUSES,
} from './vocabulary/clauses.js';
export { HEADS, HEADS_IN, type HeadDef, type LineContext } from './vocabulary/heads.js';
export {
  BUILT_IN_NAMES,
  LANGUAGES,
  type Language,
  THING_KINDS,
  type ThingKind,
  type Words,
} from './vocabulary/kinds.js';
export { nearest } from './vocabulary/near.js';
export { type Make, NEEDS, type Need } from './vocabulary/needs.js';
export {
  dayInWords,
  listPieces,
  PHRASES,
  type PhraseId,
  phrase,
  phrasePieces,
  phraseText,
} from './vocabulary/phrases.js';
export { type Piece, renderPhrase, type Slots, textOf } from './vocabulary/render-phrase.js';
export { RULE_WORDS, type RuleWordDef } from './vocabulary/rule-words.js';
export { SECTION_BY_WORD, SECTIONS, type SectionDef } from './vocabulary/sections.js';
export { SIGNAL_WORDS, SIGNALS, type Signal } from './vocabulary/signals.js';
export { personOf, STATUSES, type Status, statusesAfter } from './vocabulary/statuses.js';
export type { VerbDef } from './vocabulary/verb.js';
