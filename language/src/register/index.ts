// The register of a library: what a guide says, what was issued, what changed since.
export { type Change, changedPlaces, changesBetween, changeText } from './changes.js';
export { factsOfEdition, type IssuedEdition, importsFrom, newestRevision } from './edition.js';
export {
  clauseWritten,
  type Fact,
  type ShopFacts,
  type ShownFiles,
  shopFacts,
  type WorkLine,
} from './facts.js';
export { editionIn, issueFolder, newestIssue, numberIn, revisionOf, SOURCE } from './issue-folder.js';
export { changeSummary, revisionLine } from './revision-line.js';
export { type Use, type Used, whereUsed } from './where-used.js';
