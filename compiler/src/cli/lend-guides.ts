// What the command lends the language server: the makers of previews and prints.
import { fileURLToPath } from 'node:url';
import type { GuideSource, Renderers } from '@baywright/server';
import { type GuideChoice, type LoweredGuide, lowerGuide } from '../document/lower/index.js';
import { fileName, join } from './paths.js';
import { guideShelf } from './publish.js';
import type { Shell } from './shell.js';

type Kind = GuideChoice['sheet'];
type Options = Parameters<NonNullable<Renderers['preview']>>[2];

export function guideRenderers(shell: Shell, canMakePdf: boolean): Renderers {
  return {
    canMakePdf,
    async preview(source, kind, options) {
      const { renderHtml } = await import('../output.js');
      return forCursor(renderHtml(lowered(shell, source, kind, options).document).html, source.analysis.path);
    },
    async print(source, { kind, options, format }) {
      const { renderHtml, renderPdf } = await import('../output.js');
      const { document } = lowered(shell, source, kind, options);
      const paper = (options.pageSize ?? source.settings.page) === 'Letter' ? 'letter' : 'a4';
      try {
        const pdf = format === 'pdf' ? await renderPdf(document, { paper }) : undefined;
        const name = nameOf(source, kind, options, format);
        const path = join(join(rootOf(shell, source), source.settings.output), name);
        shell.write(path, pdf?.pdf ?? renderHtml(document).html);
        const uri = `${source.rootUri}${source.settings.output}/${encodeURIComponent(name)}`;
        return { made: true, file: { name, uri }, ...(pdf ? { pages: pdf.pages } : {}) };
      } catch (error) {
        return { made: false, reason: error instanceof Error ? error.message : String(error) };
      }
    },
  };
}

function lowered(shell: Shell, source: GuideSource, kind: Kind, options: Options): LoweredGuide {
  const { settings } = source;
  const choice: GuideChoice = {
    sheet: kind,
    ...(options.side === undefined ? {} : { side: options.side }),
    option: options.variant ?? {},
    units: options.unitOrder ?? settings.units,
    language: options.language ?? settings.languages[0] ?? 'en',
  };
  return lowerGuide(source.analysis, choice, guideShelf(shell, { root: rootOf(shell, source), settings }));
}

function rootOf(shell: Shell, { rootUri }: GuideSource): string {
  return rootUri.startsWith('file:') ? shell.resolve(fileURLToPath(rootUri)) : shell.folder;
}

/** Lines count from zero in an editor, and only those of the file that is previewed can be followed. */
function forCursor(html: string, path: string): string {
  return html.replace(/ data-line="(\d+)" data-file="([^"]*)"/g, (_all, line: string, file: string) =>
    file === path ? ` data-line="${Number(line) - 1}"` : '',
  );
}

/** The name that `baywright build` gives the same sheet. */
function nameOf({ analysis, settings }: GuideSource, kind: Kind, options: Options, format: string): string {
  const parts = [
    fileName(analysis.path).replace(/\.bay$/, ''),
    ...(kind === 'guide' ? [] : [kind]),
    ...(options.side === undefined ? [] : [options.side]),
    ...Object.entries(options.variant ?? {}).map(([name, value]) => `${name}-${value}`),
    ...(options.language === undefined || options.language === settings.languages[0]
      ? []
      : [options.language]),
  ];
  return `${parts.join('.')}.${format}`;
}
