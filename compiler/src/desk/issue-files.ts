// What goes into the folder of an issue: sources, guides, the checked model.
import { type Analysis, type Language, SOURCE } from '@baywright/language';
import { USUAL, wantedOf } from '../cli/build/choices.js';
import type { Shelf } from '../cli/libraries.js';
import { makeGuide } from '../cli/publish.js';
import type { Shell } from '../cli/shell.js';
import type { GuideChoice } from '../document/lower/index.js';
import { translationsOf } from './issued-translations.js';
import { checkedModel } from './model.js';

/** Files by their path in the folder of the issue. A withdrawn procedure has no guide: nobody is to print it. */
export async function issueFiles(
  shell: Shell,
  shelf: Shelf,
  analysis: Analysis,
): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const files = new Map<string, string | Uint8Array>();
  for (const path of [analysis.path, ...analysis.dependencies]) {
    const text = shelf.text(path);
    if (text !== undefined) files.set(`${SOURCE}/${path}`, text);
  }
  for (const [path, text] of translationsOf(shell, shelf, analysis.job)) files.set(`${SOURCE}/${path}`, text);
  files.set('model.json', `${JSON.stringify(checkedModel(analysis), undefined, 2)}\n`);
  if (analysis.model.status?.status?.text === 'withdrawn') return files;
  const { openEngine } = await import('../pdf/engine.js');
  const engine = openEngine();
  try {
    for (const [wanted] of wantedOf(shell.env.SOURCE_DATE_EPOCH, shelf, analysis, USUAL).prints) {
      const name = nameOf(wanted.choice, shelf.settings.languages[0]);
      const made = await makeGuide(shell, shelf, analysis, wanted, ['html', 'pdf'], engine);
      if (made.html !== undefined) files.set(`${name}.html`, made.html);
      if (made.pdf !== undefined) files.set(`${name}.pdf`, made.pdf.bytes);
    }
  } finally {
    engine.close();
  }
  return files;
}

/** The first language of the house is not named. */
function nameOf({ side, language }: GuideChoice, first: Language | undefined): string {
  return ['guide', side, language === first ? undefined : language]
    .filter((part) => part !== undefined)
    .join('.');
}
