// Looks at the findings of one family alone, so that a case holds no more lines than it needs.
import { checkMarked, findingsOf } from '../suite-helper.js';

/** As `checkMarked`, for findings whose code starts with one of the beginnings. */
export function checkOnly(text: string, ...beginnings: readonly string[]) {
  return checkMarked(text, (files) =>
    findingsOf(files).filter((f) => beginnings.some((b) => f.code.startsWith(b))),
  );
}
