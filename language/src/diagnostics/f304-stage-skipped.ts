// F304: a torque stage before its turn.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const stageSkipped = defineDiagnostic<StateWords>({
  code: 'F304',
  name: 'stage-skipped',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} torqued to a later stage before the one before it`,
  why: 'Stages bring a joint down evenly: every fastener to the first stage in the order, then the next. A stage left out clamps one side before the other.',
  wrong: ``,
  right: ``,
});
