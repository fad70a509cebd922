// What goes into the folder of an issue: sources, guides, the checked model.
import type { Analysis } from '@baywright/language';
import { SOURCE } from '@baywright/language';
import type { Shelf } from '../cli/libraries.js';
import { type MadeGuide, makeGuide, type Wanted } from '../cli/publish.js';
import type { Shell } from '../cli/shell.js';
import { checkedModel } from './model.js';

/** A guide to print: what its files are called, and how it is made. */
interface Print {
  readonly name: string;
  readonly wanted: Wanted;
}

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
  files.set('model.json', `${JSON.stringify(checkedModel(analysis), undefined, 2)}\n`);
  if (analysis.model.status?.status?.text === 'withdrawn') return files;
  const { openEngine } = await import('../pdf/engine.js');
  const engine = openEngine();
  try {
    for (const { name, wanted } of prints(shell, shelf, analysis)) {
      const made: MadeGuide = await makeGuide(shell, shelf, analysis, wanted, ['html', 'pdf'], engine);
      if (made.html !== undefined) files.set(`${name}.html`, made.html);
      if (made.pdf !== undefined) files.set(`${name}.pdf`, made.pdf.bytes);
    }
  } finally {
    engine.close();
  }
  return files;
}

/** A guide for each side and one for both, in each language of the house. */
function prints(shell: Shell, { settings }: Shelf, { model }: Analysis): Print[] {
  const sides = model.sides.length > 1 ? [...model.sides, 'both'] : [undefined];
  const epoch = shell.env.SOURCE_DATE_EPOCH;
  const timestamp = epoch !== undefined && /^\d{1,11}$/.test(epoch) ? { timestamp: Number(epoch) } : {};
  return settings.languages.flatMap((language, i) =>
    sides.map((side): Print => {
      const name = ['guide', side, i === 0 ? undefined : language].filter((part) => part !== undefined);
      return {
        name: name.join('.'),
        wanted: {
          choice: {
            sheet: 'guide',
            ...(side === undefined ? {} : { side }),
            option: {},
            units: settings.units,
            language,
          },
          print: { paper: settings.page === 'A4' ? 'a4' : 'letter', print: 'bay', ...timestamp },
        },
      };
    }),
  );
}
