// `baywright/explain`: the page of a kind of finding, as the reference has it.
import { DIAGNOSTICS, findingFile, findingPage } from '@baywright/language';
import { type ExplainAnswer, type ExplainQuestion, METHODS } from '../../protocol.js';
import { libraryFeature } from '../feature.js';

export const explain = libraryFeature<ExplainQuestion>(
  METHODS.explain,
  {},
  (_view, { page }): ExplainAnswer => {
    const def = DIAGNOSTICS.find((d) => d.code === page || d.name === page || findingFile(d) === page);
    return def ? { markdown: findingPage(def).text } : {};
  },
);
