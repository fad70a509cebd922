// Which pictures of a document the typesetter cannot read, though their files look sound: each is set by itself. Only
// asked when a whole print was refused.
import { walkBlocks } from '../document/blocks.js';
import type { GuideDocument, OutputFinding } from '../document/document.js';
import type { Picture } from '../document/picture.js';
import { type Engine, TypesetError } from './engine.js';
import type { PrintSource } from './source.js';
import { stringLiteral } from './typst-code.js';

export async function refusedPictures(
  document: GuideDocument,
  pictures: PrintSource['pictures'],
  standard: string,
  engine: Engine,
): Promise<readonly Picture[]> {
  const refused = new Set<Uint8Array>();
  for (const { path, data } of pictures) {
    // As it is set in the guide: some pictures are refused by the standard of the file alone.
    const main = `#set document(title: "-", date: none)\n#image(${stringLiteral(path)}, alt: "-")`;
    try {
      await engine.typeset({
        main,
        settings: '{}',
        pictures: [{ path, data }],
        standard,
        timestamp: 0,
      });
    } catch (error) {
      if (!(error instanceof TypesetError)) throw error;
      refused.add(data);
    }
  }
  return picturesOf(document).filter(({ data }) => refused.has(data));
}

export function damaged({ name, alt, source }: Picture): OutputFinding {
  const message = `The picture “${name ?? alt}” is damaged and cannot be printed; save it again`;
  return source ? { message, file: source.file, line: source.line } : { message };
}

function picturesOf(document: GuideDocument): readonly Picture[] {
  return [...walkBlocks(document.blocks)].flatMap((block) => {
    if (block.kind === 'figure') return [block.picture];
    if (block.kind !== 'row') return [];
    return block.beside.flatMap((beside) => (beside.kind === 'picture' ? [beside.picture] : []));
  });
}
