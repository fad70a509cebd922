// `baywright/check`: checks one document or all now, and counts what was found. `baywright/questions`: what a draft
// leaves open, by danger.
import type { CodeLetter, Finding } from '@baywright/language';
import {
  type CheckAnswer,
  type CheckQuestion,
  METHODS,
  type OpenQuestion,
  type QuestionsQuestion,
} from '../../protocol.js';
import type { View } from '../../view.js';
import { messageOf } from '../diagnostics.js';
import { documentFeature, libraryFeature } from '../feature.js';
import { countsOf } from './library.js';

export const check = libraryFeature<CheckQuestion | null>(
  METHODS.check,
  {},
  async (view, params): Promise<CheckAnswer> => {
    if (params?.uri !== undefined) {
      const snapshot = view.snapshot(params.uri);
      return snapshot
        ? { files: 1, findings: countsOf(snapshot.analysis().findings) }
        : { files: 0, findings: countsOf([]) };
    }
    return checkAll(view);
  },
);

async function checkAll(view: View): Promise<CheckAnswer> {
  const findings: Finding[] = [];
  let files = 0;
  for (const shelf of view.shelves()) {
    const paths = shelf.paths();
    for (const path of paths) {
      if (view.isCancelled()) break;
      findings.push(...view.findings(shelf, path));
      files += 1;
      if (files % 10 === 0) {
        view.progress(files, paths.length, view.say.checkingLibrary);
        await view.pause();
      }
    }
  }
  return { files, findings: countsOf(findings) };
}

export const questions = documentFeature<QuestionsQuestion>(
  METHODS.questions,
  {},
  (snapshot): OpenQuestion[] => {
    const open = snapshot
      .analysis()
      .findings.filter((f) => f.severity === 'question' && f.file === snapshot.path);
    const rank = (f: Finding): number => DANGER.indexOf(f.code.slice(0, 1) as CodeLetter);
    return open
      .sort((a, b) => rank(a) - rank(b) || a.span.start - b.span.start)
      .map((f) => ({ code: f.code, message: messageOf(f), location: snapshot.location(f.file, f.span) }));
  },
);

/** People first, then what holds the vehicle together, then the rest. */
const DANGER: readonly CodeLetter[] = ['H', 'S', 'F', 'L', 'V', 'Q', 'N', 'R', 'W', 'G'];
