// One thing that happens on the way through a procedure: a statement on an object, a message, a hold. Acts are
// numbered in the order they run; cells remember the act that set them, so that a finding can point there.
import type { BoundStatement } from '../names/statement.js';
import type { Line, PerformLine, StepLine } from '../syntax/tree.js';
import type { Span } from '../text/span.js';
import type { Condition } from '../variants/diagrams.js';

export interface Act {
  readonly index: number;
  /** The line that acts, in its own file. */
  readonly line: Line;
  readonly file: string;
  readonly statement: BoundStatement | undefined;
  /** The combinations and paths it runs on. */
  readonly when: Condition;
  readonly step: StepLine | undefined;
  /** The statements right behind it in the same block, for `remove` that the next line hangs. */
  readonly following: readonly BoundStatement[];
  /** The outermost `perform` that brought it here; findings in performed lines are blamed on it. */
  readonly through: PerformLine | undefined;
  /** Where a finding about this act stands in the procedure under analysis. */
  readonly blame: { readonly file: string; readonly span: Span };
}
