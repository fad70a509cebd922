// `baywright where-used`: where a thing of the library is used, and which guides that touches.
import { type Use, type Used, whereUsed } from '@baywright/language';
import { choice, defineCommand, list } from '../command.js';
import { collect, troubleLines } from '../libraries.js';
import { join, relativeTo } from '../paths.js';
import { plural } from '../report/text.js';

export default defineCommand({
  name: 'where-used',
  summary: 'find where a part, spec, tool, block or hazard is used',
  docs: `Looks through the whole library for what a name stands for: the name of an entry, its title, a part number, a thread or a fluid grade, a mark, an operation, a procedure by number, a file, a hazard. Says each line that uses it, guide by guide.

The exit code is 1 when nothing goes by that name.`,
  takes: [{ name: 'name', docs: 'what to look for; in quotes when it has blanks' }],
  options: {
    in: list(
      '--in <path>',
      'a file or folder to look through; the current folder where not given; may be repeated',
    ),
    format: choice('-f, --format <form>', 'how it is written', ['text', 'json'], 'text'),
  },
  examples: [
    ['baywright where-used hub-bolt', 'an entry by name'],
    ['baywright where-used "M12x1.5"', 'every fastener with this thread'],
    ['baywright where-used HB-2044', 'a part number'],
    ['baywright where-used WH-01', 'a procedure that others perform from'],
  ],
  run({ shell, paint, paintErr }, [name = ''], { in: folders, format }) {
    const { shelves, troubles } = collect(shell, folders);
    const found = shelves.flatMap(({ root, library, files }) =>
      whereUsed(library, files, name).map((used) => ({ root, used })),
    );
    const path = (root: string, file: string): string => relativeTo(shell.folder, join(root, file));
    if (format === 'json') {
      const data = found.map(({ root, used }) => inFolder(used, (file) => path(root, file)));
      shell.out.write(`${JSON.stringify({ name, found: data }, undefined, 2)}\n`);
    } else if (found.length === 0) {
      shell.err.write(`Nothing here goes by the name “${name}”.\n`);
    } else {
      const blocks = found.map(({ root, used }) => {
        const told = inFolder(used, (file) => path(root, file));
        const place = told.file === undefined ? '' : ` ${paint.dim(at(told.file, told.line ?? 0))}`;
        const head = `${paint.bold(used.name)} ${used.title} (${used.kind})${place}`;
        return [head, ...guides(told.uses, paint.bold)].join('\n');
      });
      shell.out.write(`${blocks.join('\n\n')}\n`);
    }
    shell.err.write(troubleLines(troubles, paintErr));
    return troubles.length > 0 ? 2 : found.length === 0 ? 1 : 0;
  },
});

function guides(uses: readonly Use[], bold: (text: string) => string): string[] {
  if (uses.length === 0) return ['  not used'];
  const files = [...new Set(uses.map(({ file }) => file))];
  const count = `  used in ${plural(files.length, 'file')}, ${plural(uses.length, 'line')}:`;
  return [
    count,
    ...files.flatMap((file) => {
      const own = uses.filter((use) => use.file === file);
      const first = own[0];
      return [
        `  ${bold(first?.number ?? file)} ${first?.title ?? ''}`,
        ...own.map(({ line, text }) => `    ${at(file, line)} ${text}`),
      ];
    }),
  ];
}

const at = (file: string, line: number): string => `${file}:${line}`;

/** The same with paths as the command line shows them and lines from 1. */
function inFolder(used: Used, path: (file: string) => string): Used {
  return {
    ...used,
    file: used.file === undefined ? undefined : path(used.file),
    line: used.line === undefined ? undefined : used.line + 1,
    uses: used.uses.map((use) => ({ ...use, file: path(use.file), line: use.line + 1 })),
  };
}
