// Reads the fenced blocks of the handwritten pages: examples in Baywright, commands, and what commands print.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const GUIDE = join(ROOT, 'language/docs/guide');

export interface Block {
  /** What stands behind the opening fence: `bay wrong S302 in a.bay`, `sh exits 1`, `text`. */
  readonly info: string;
  readonly text: string;
  /** One-based line of the opening fence. */
  readonly line: number;
}

export interface GuidePage {
  readonly name: string;
  readonly text: string;
  readonly blocks: readonly Block[];
}

/** The pages of the guide in the order of its contents, the contents first. */
export function guidePages(): GuidePage[] {
  const contents = read('README.md');
  const linked = [...contents.text.matchAll(/^\d+\. \[[^\]]+\]\(([^)]+)\)/gm)].map(([, name = '']) => name);
  return [contents, ...linked.map(read)];
}

/** Names of all files in the guide's folder. */
export const guideFiles = (): string[] => readdirSync(GUIDE);

function read(name: string): GuidePage {
  const text = readFileSync(join(GUIDE, name), 'utf8');
  return { name, text, blocks: blocksIn(text) };
}

export function blocksIn(text: string): Block[] {
  const blocks: Block[] = [];
  let open: { info: string; line: number; lines: string[] } | undefined;
  for (const [i, line] of text.split('\n').entries()) {
    if (line.startsWith('```')) {
      if (open) blocks.push({ info: open.info, line: open.line, text: `${open.lines.join('\n')}\n` });
      open = open ? undefined : { info: line.slice(3).trim(), line: i + 1, lines: [] };
    } else open?.lines.push(line);
  }
  return blocks;
}
