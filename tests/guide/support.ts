// Reads pages and PDFs back as text, for comparison with what was expected.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** The page as an outline: headings, lines of text, table cells, controls and drawings in reading order. */
export function pageOutline(html: string): string {
  return html
    .replace(/<(style|script|head)\b[\s\S]*?<\/\1>/g, '')
    .replace(/<svg\b[^>]*?(?:aria-label="([^"]*)")?[^>]*>[\s\S]*?<\/svg>/g, (found) => {
      const label = /aria-label="([^"]*)"/.exec(found)?.[1];
      return label ? `[drawing: ${label}]` : '';
    })
    .replace(/<img\b[^>]*alt="([^"]*)"[^>]*>/g, '[picture: $1]')
    .replace(/<input\b([^>]*)>/g, (_, attributes: string) =>
      /type="(checkbox|radio)"/.test(attributes) ? '[ ] ' : '[____] ',
    )
    .replace(/<h(\d)\b[^>]*>/g, (_, level: string) => `\n${'#'.repeat(Number(level))} `)
    .replace(/<\/(?:td|th)>/g, ' | ')
    .replace(
      /<(?:p|div|li|tr|section|label|legend|figure|fieldset|dt|dd|summary|details|nav|main|aside|footer|header|button|output|br)\b[^>]*>/g,
      '\n',
    )
    .replace(/<[^>]+>/g, '')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, '&')
    .split('\n')
    .map((line) => line.replace(/[ \t]+/g, ' ').trim())
    .filter((line) => line !== '')
    .join('\n');
}

/** The tags of a PDF with the text under them, without wrappers that say nothing. Needs Debian's poppler-utils. */
export function pdfStructure(pdf: Uint8Array): string {
  return withFile(pdf, (path) => run('pdfinfo', ['-struct-text', path]))
    .split('\n')
    .map((line) =>
      line
        .trim()
        .replace(/:$/, '')
        .replace(/ (\(block\)|\(inline\))$/, ''),
    )
    .filter(
      (line) =>
        line !== '' &&
        !line.startsWith('/') &&
        !/^(Div|Span|NonStruct|Document)$/.test(line) &&
        line !== '""',
    )
    .join('\n');
}

export function pdfText(pdf: Uint8Array, ...options: readonly string[]): string {
  return withFile(pdf, (path) => run('pdftotext', [...options, path, '-']));
}

export function pdfFacts(pdf: Uint8Array): string {
  return withFile(pdf, (path) => run('pdfinfo', [path]));
}

export function pdfFonts(pdf: Uint8Array): string {
  return withFile(pdf, (path) => run('pdffonts', [path]));
}

/** The PDF's objects, uncompressed. Needs Debian's qpdf. */
export function pdfObjects(pdf: Uint8Array): string {
  return withFile(pdf, (path) =>
    execFileSync('qpdf', ['--qdf', '--object-streams=disable', path, '-'], { maxBuffer: 1 << 28 }).toString(
      'latin1',
    ),
  );
}

/** Says what a valid PDF file is not; empty for a sound one. */
export function pdfDamage(pdf: Uint8Array): string {
  return withFile(pdf, (path) => {
    const out = run('qpdf', ['--check', path]);
    return /No syntax or stream encoding errors found/.test(out) ? '' : out;
  });
}

function run(command: string, options: readonly string[]): string {
  return execFileSync(command, options, {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
    maxBuffer: 1 << 28,
  });
}

function withFile<T>(data: Uint8Array, use: (path: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'baywright-'));
  try {
    const path = join(folder, 'sheet.pdf');
    writeFileSync(path, data);
    return use(path);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
