// What every page says about itself: number, revision, status, side and options of the print.
import { type Analysis, dayInWords, type Language, phrase, phraseText, STATUSES } from '@baywright/language';
import type { Identity } from '../document.js';
import { capitalFirst } from './names.js';
import { type Print, translated } from './print.js';
import { foreignTo } from './texts.js';
import { optionText, sideWord } from './variant-words.js';

export function identityOf(print: Print): Identity {
  const { model } = print.analysis;
  const { language } = print;
  const latest = model.revisions[0];
  const number = latest?.number?.value;
  const status = STATUSES.find((known) => known === model.status?.status?.text) ?? 'draft';
  const side = sideText(print);
  const title = translated(print, print.analysis.path, model.title);
  const titleLanguage = foreignTo(print, print.analysis.path, model.title);
  const options = Object.entries(print.choice.option).map(([name, value]) =>
    optionText(print, name, [value]),
  );
  return {
    number: model.number ?? '?',
    title,
    ...(titleLanguage === undefined ? {} : { titleLanguage }),
    revision: number === undefined ? '–' : String(number.n / number.d),
    date: latest?.day?.text ?? '',
    ...(side === undefined ? {} : { side }),
    options,
    shop: print.shelf.settings.shop.name,
    status,
    statusText: statusText(language, status, model.status?.day?.text, openQuestions(print.analysis).length),
    print: [
      print.choice.side ?? (model.sides.length > 0 ? 'both' : 'all'),
      ...Object.entries(print.choice.option).flat(),
      language,
    ]
      .join('-')
      .replace(/[^\p{L}\p{N}-]+/gu, '-'),
  };
}

/** `Left side`, `Both sides`; undefined for a job without sides. */
export function sideText(print: Print): string | undefined {
  const { language } = print;
  const [first] = print.sides;
  if (first?.word === undefined) return undefined;
  if (print.sides.length > 1) return phrase('both-sides', language);
  return capitalFirst(phraseText('on-side', language, { side: sideWord(print, first.word) }));
}

/** `Released 2026-10-05`, `Draft: 2 questions open`: short, for the frame of every page and for lists. */
export function statusText(
  language: Language,
  status: Identity['status'],
  day: string | undefined,
  questions: number,
): string {
  const said = [phrase(status, language), ...(day === undefined ? [] : [day])].join(' ');
  if (questions === 0) return said;
  const open =
    questions === 1
      ? phrase('one-question-open', language)
      : phraseText('questions-open', language, { count: questions });
  return `${said}: ${open}`;
}

/** Who released or proved it and when; undefined while nobody did. */
export function signedText(print: Print): string | undefined {
  const { language } = print;
  const line = print.analysis.model.status;
  const status = STATUSES.find((known) => known === line?.status?.text);
  if (!line || !status || line.by.length === 0) return undefined;
  const day = line.day?.text;
  return phraseText('status-by', language, {
    status: phrase(status, language),
    who: line.by.map(({ text }) => text).join(', '),
    date: day === undefined ? undefined : dayInWords(day, language),
  });
}

/** Findings that only the writer can answer: what is not known yet. */
export function openQuestions(analysis: Analysis): Analysis['findings'] {
  return analysis.findings.filter(({ severity, file }) => severity === 'question' && file === analysis.path);
}
