// Choices, preview, print and issue: the questions about guides, answered by the renderers that were lent.
import { LANGUAGES } from '@baywright/language';
import {
  type Choices,
  type ChoicesQuestion,
  type IssueAnswer,
  type IssueQuestion,
  METHODS,
  type PreviewAnswer,
  type PreviewQuestion,
  type PrintAnswer,
  type PrintQuestion,
} from '../../protocol.js';
import type { GuideSource } from '../../renderers.js';
import type { Snapshot } from '../../snapshot.js';
import type { View } from '../../view.js';
import { documentFeature } from '../feature.js';
import { countsOf } from './library.js';

export const choices = documentFeature<ChoicesQuestion>(
  METHODS.choices,
  {},
  (snapshot, _params, view): Choices => {
    const { job, model } = snapshot.analysis();
    const { settings } = snapshot.shelf;
    const sides = model.sides.filter((s) => s === 'left' || s === 'right');
    return {
      number: model.number ?? '?',
      title: model.title,
      sides: sides.length > 1 ? [...sides, 'both'] : sides,
      options: job.universe.axes
        .filter((a) => a.kind === 'option' || a.kind === 'year' || a.kind === 'vehicle')
        .map((a) => ({ name: a.name, values: a.values })),
      unitOrder: settings.units,
      pageSize: settings.page,
      languages: LANGUAGES.filter((l) => settings.languages.includes(l)),
      canMakePdf: view.renderers.canMakePdf,
    };
  },
);

export const preview = documentFeature<PreviewQuestion>(
  METHODS.preview,
  {},
  async (snapshot, { kind, options }, view): Promise<PreviewAnswer> => {
    const findings = countsOf(snapshot.analysis().findings);
    const make = view.renderers.preview;
    return { html: make ? await make(sourceOf(snapshot, view), kind, options) : NO_PREVIEW, findings };
  },
);

export const print = documentFeature<PrintQuestion>(
  METHODS.print,
  {},
  (snapshot, question, view): Promise<PrintAnswer> | PrintAnswer =>
    view.renderers.print?.(sourceOf(snapshot, view), question) ?? {
      made: false,
      reason: 'Guides are made by the Baywright command, which is not here.',
    },
);

export const issue = documentFeature<IssueQuestion>(
  METHODS.issue,
  {},
  (snapshot, question, view): Promise<IssueAnswer> | IssueAnswer =>
    view.renderers.issue?.(sourceOf(snapshot, view), question) ?? {
      issued: false,
      blockers: [{ message: 'Guides are issued by the Baywright command, which is not here.' }],
    },
);

const NO_PREVIEW =
  '<!doctype html><html lang="en"><meta charset="utf-8"><title>Baywright</title><body><p>The preview is made by the Baywright command, which is not here.</p></body></html>';

function sourceOf(snapshot: Snapshot, view: View): GuideSource {
  return {
    analysis: snapshot.analysis(),
    settings: snapshot.shelf.settings,
    uri: snapshot.uri,
    rootUri: snapshot.shelf.root,
    readBase64: (path) => view.readBase64(snapshot.shelf.uri(path)),
  };
}
