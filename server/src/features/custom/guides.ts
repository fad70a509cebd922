// Choices, preview, print and issue: the questions about guides, answered by the renderers that were lent.
import { LANGUAGES, type Span, statusesAfter } from '@baywright/language';
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
  type SignAnswer,
  type SignQuestion,
} from '../../protocol.js';
import type { GuideSource } from '../../renderers.js';
import type { Snapshot } from '../../snapshot.js';
import type { View } from '../../view.js';
import { documentFeature } from '../feature.js';
import { countsOf, statusOf } from './library.js';

export const choices = documentFeature<ChoicesQuestion>(
  METHODS.choices,
  {},
  (snapshot, _params, view): Choices => {
    const job = snapshot.job();
    const model = job.file;
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
      status: statusOf(model),
      nextStatuses: statusesAfter(statusOf(model)),
    };
  },
);

export const preview = documentFeature<PreviewQuestion>(
  METHODS.preview,
  {},
  async (snapshot, { kind, options }, view): Promise<PreviewAnswer> => {
    const findings = countsOf((await view.analysed(snapshot)).findings);
    const make = view.renderers.preview;
    return {
      html: make ? await make(sourceOf(snapshot, view), kind, options) : noPreview(snapshot),
      findings,
    };
  },
);

export const print = documentFeature<PrintQuestion>(
  METHODS.print,
  {},
  (snapshot, question, view): Promise<PrintAnswer> | PrintAnswer =>
    view.renderers.print?.(sourceOf(snapshot, view), question) ?? {
      made: false,
      reason: snapshot.say.noGuides,
    },
);

export const sign = documentFeature<SignQuestion>(
  METHODS.sign,
  {},
  async (snapshot, question, view): Promise<SignAnswer> => {
    const answer = await view.renderers.sign?.(sourceOf(snapshot, view), question);
    if (!answer) return { signed: false, reasons: [snapshot.say.noSigning] };
    if (!answer.signed) return answer;
    const { span, text } = difference(snapshot.text, answer.text);
    return { signed: true, edit: { range: snapshot.range(span), newText: text } };
  },
);

export const issue = documentFeature<IssueQuestion>(
  METHODS.issue,
  {},
  async (snapshot, question, view): Promise<IssueAnswer> => {
    const answer = await view.renderers.issue?.(sourceOf(snapshot, view), question);
    // What was issued is compared with from now on.
    if (answer?.state === 'issued') snapshot.shelf.listChanged();
    return answer ?? { state: 'refused', reasons: [snapshot.say.noSigning] };
  },
);

/** The one place where a text was changed into another. */
function difference(before: string, after: string): { span: Span; text: string } {
  const most = Math.min(before.length, after.length);
  let head = 0;
  while (head < most && before[head] === after[head]) head += 1;
  let tail = 0;
  while (tail < most - head && before.at(-1 - tail) === after.at(-1 - tail)) tail += 1;
  return { span: { start: head, end: before.length - tail }, text: after.slice(head, after.length - tail) };
}

const noPreview = ({ client, say }: Snapshot): string =>
  `<!doctype html><html lang="${client.language}"><meta charset="utf-8"><title>Baywright</title><body><p>${say.noPreview}</p></body></html>`;

function sourceOf(snapshot: Snapshot, view: View): GuideSource {
  return {
    analysis: snapshot.analysis(),
    settings: snapshot.shelf.settings,
    uri: snapshot.uri,
    rootUri: snapshot.shelf.root,
    readBase64: (path) => view.readBase64(snapshot.shelf.uri(path)),
  };
}
