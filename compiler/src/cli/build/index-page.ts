// The page that lists the guides of a build, written beside them, with links that work from a folder or a stick.
import { phrase } from '@baywright/language';
import { statusText } from '../../document/lower/identity.js';
import { wordsOf } from '../../document/words-of.js';
import { renderLibrary } from '../../output.js';
import { join, relativeTo } from '../paths.js';
import type { Shell } from '../shell.js';
import type { Result } from './jobs.js';

/** Writes one page for each output folder that is not below another; gives the paths. */
export function indexPages(shell: Shell, guides: readonly Result[]): string[] {
  const folders = [...new Set(guides.map(({ folder }) => folder))].sort((a, b) => a.length - b.length);
  const tops = folders.filter(
    (folder, i) => !folders.slice(0, i).some((above) => folder.startsWith(`${above}/`)),
  );
  return tops.map((top) => {
    const own = guides.filter(({ folder }) => folder === top || folder.startsWith(`${top}/`));
    const path = join(top, 'index.html');
    shell.write(path, indexHtml(top, own), true);
    return path;
  });
}

function indexHtml(top: string, guides: readonly Result[]): string {
  const settings = guides[0]?.shelf.settings;
  const language = settings?.languages[0] ?? 'en';
  return renderLibrary({
    title: phrase('guides-title', language),
    shop: [...new Set(guides.map(({ shelf }) => shelf.settings.shop.name))]
      .filter((name) => name !== '')
      .join('; '),
    standing: phrase('standing-statement', language),
    language,
    words: wordsOf(language),
    guides: guides
      .map(({ entry: { status, day, ...entry }, counts, files }) => ({
        ...entry,
        statusText: statusText(language, status, day, counts.question),
        files: files.map(({ path, label }) => ({ href: relativeTo(top, path), label })),
      }))
      .sort((a, b) => a.number.localeCompare(b.number, 'en', { numeric: true })),
  });
}
