// Small Markdown writers that the pages of the reference share.

/** One page: its path from the reference's folder and its text. */
export interface Page {
  readonly path: string;
  readonly text: string;
}

/** A page from blocks that blank lines part, under a note that says where it comes from. */
export function page(path: string, title: string, ...blocks: readonly (string | undefined)[]): Page {
  const note =
    '<!-- Made from the tables of the language by `npm run generate`. Change the table, not this page. -->';
  const all = [`# ${title}`, note, ...blocks].filter((block) => block !== undefined && block !== '');
  return { path, text: `${all.join('\n\n')}\n` };
}

/** A table; bars in cells are kept from parting them, columns without any text fall away. */
export function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const used = heads.map((_, column) => rows.some((row) => (row[column] ?? '') !== ''));
  const line = (cells: readonly string[]): string =>
    `| ${cells
      .filter((_, column) => used[column])
      .map(cell)
      .join(' | ')} |`;
  return [line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n');
}

export const code = (text: string): string => (text === '' ? '' : `\`${text}\``);
export const codes = (texts: readonly string[]): string => texts.map(code).join(', ');
export const list = (items: readonly string[]): string => items.map((item) => `- ${item}`).join('\n');

/** A fenced block of Baywright, `info` behind the language's name. */
export function bay(text: string, info = ''): string {
  return `\`\`\`bay${info === '' ? '' : ` ${info}`}\n${text.replace(/\n+$/, '')}\n\`\`\``;
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|').replace(/\s*\n\s*/g, ' ');
}
