// G116, G117: work where none goes, and blocks with nothing in them.
import { type Fix, finding } from '../diagnostics/define.js';
import { workInCatalogue } from '../diagnostics/g116-work-in-catalogue.js';
import { blockEmpty } from '../diagnostics/g117-block-empty.js';
import { linesOfWork } from '../names/job.js';
import type { Line } from '../syntax/tree.js';
import type { Check } from './check.js';
import { lineEnd, lineStart } from './own-lines.js';

/** Lines that say nothing without what stands below them. An empty step is one that is still to be written. */
const BLOCKS: ReadonlySet<Line['kind']> = new Set<Line['kind']>(['when', 'if', 'otherwise', 'repeat']);

export const blocks: Check = ({ job: { file } }) => {
  const { path, tree } = file;
  if (file.kind === 'catalogue')
    return file.work.map(({ head }) =>
      finding(workInCatalogue, { file: path, span: head }, { head: head.text }),
    );
  return linesOfWork(file)
    .filter((line) => BLOCKS.has(line.kind) && line.children.length === 0 && !line.broken)
    .map((line) =>
      finding(
        blockEmpty,
        { file: path, span: line.code, fixes: line.kind === 'if' ? [] : [takenOut(path, tree.text, line)] },
        { head: tree.text.slice(line.code.start, line.code.end) },
      ),
    );
};

/** Not offered for an `if`: an `otherwise` may hang on it. */
function takenOut(file: string, text: string, line: Line): Fix {
  const span = { start: lineStart(text, line.start), end: lineEnd(text, line.end) };
  return { title: 'Take the line out', edits: [{ file, span, text: '' }] };
}
