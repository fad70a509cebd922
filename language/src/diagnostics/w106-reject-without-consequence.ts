// W106: reject without consequence.
import { defineDiagnostic } from './define.js';
import { textJob } from './text-example.js';

export const rejectWithoutConsequence = defineDiagnostic<{ readonly count: number }>({
  code: 'W106',
  name: 'reject-without-consequence',
  severity: 'hint',
  message: (d) =>
    d.count === 1
      ? 'rejected, and then?'
      : `rejected, and then? ${d.count} lists in this job say nothing of it`,
  advice: () => 'write below it what to do: `if rejected` with `renew`, `stop` or the work that follows',
  why: `A technician who finds the crack must know whether to fit a new part, stop the job or ask. One finding for each job; the places are listed with it.`,
  wrong: textJob('inspect mirror-glass', '  reject: cracks', '#     ^^^^^^ W106'),
  right: textJob('inspect mirror-glass', '  reject: cracks', '  if rejected', '    stop: Order a new glass.'),
});
