// R111: declared labour far from what the steps come to.
import { defineDiagnostic } from './define.js';
import { libraryFile } from './register-example.js';

export const labourFarOff = defineDiagnostic<{
  readonly declared: string;
  readonly worked: string;
  readonly isShort: boolean;
}>({
  code: 'R111',
  name: 'labour-far-off',
  severity: 'hint',
  message: (d) =>
    d.isShort
      ? `${d.declared} of labour, but the steps alone come to about ${d.worked} with hands on`
      : `${d.declared} of labour, but the steps come to about ${d.worked} with hands on`,
  advice: (d) =>
    d.isShort
      ? 'Look whether the figure is of an older, shorter procedure.'
      : 'Look whether steps are missing, or hours stand for minutes.',
  why: `The bay is planned by this figure. The usual minutes of the steps are those of the bare work, without fetching and without what will not come off: a shop declares one to four times as much, and only a figure far outside that is pointed out. Too short is looked at always; too long only once the procedure is proved, since a draft has steps to come.`,
  wrong: libraryFile('a.bay', 'A-1', 'labour 5 h', '#      ^^^ R111', 'status proved by TR on 2026-10-01'),
  right: libraryFile('a.bay', 'A-1', 'labour 15 min', 'status proved by TR on 2026-10-01'),
});
