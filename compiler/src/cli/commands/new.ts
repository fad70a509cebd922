// `baywright new`: a file to start from.

import { dayOf } from '@baywright/server/day';
import { choice, defineCommand, text } from '../command.js';
import { fileName, join, relativeTo } from '../paths.js';
import { CannotRun } from '../shell.js';
import { STARTER_KINDS, STARTERS } from '../starters.js';

export default defineCommand({
  name: 'new',
  summary: 'start a procedure, a catalogue or a file of house rules',
  docs: `Writes a small file that checks clean, with comments that say how to go on. Nothing is ever overwritten.

Kinds: ${STARTER_KINDS.map((kind) => `${kind} (${STARTERS[kind].summary})`).join('; ')}.`,
  takes: [
    { name: 'number', docs: 'the number of the procedure, or the name of the catalogue' },
    { name: 'title', docs: 'its title, in quotes' },
  ],
  options: {
    kind: choice('-k, --kind <kind>', 'what to start', STARTER_KINDS, 'procedure'),
    in: text('--in <folder>', 'where to put it; the current folder where not given'),
  },
  examples: [
    [
      'baywright new FH-12 "Front hub and bearing, replace"',
      'writes FH-12-front-hub-and-bearing-replace.bay',
    ],
    ['baywright new fleet "Vans of the depot" --kind catalogue --in catalogue', 'a catalogue'],
  ],
  run({ shell }, [number = '', title = ''], options) {
    if (!/^[\p{L}\p{N}][\p{L}\p{N}._-]*$/u.test(number)) {
      throw new CannotRun(`“${number}” cannot be a number; use letters, digits, - . and _, as in FH-12`);
    }
    const line = title.trim();
    if (line === '' || /[\r\n]/.test(line)) throw new CannotRun('a title is one line of text, in quotes');
    const folder = shell.resolve(options.in ?? '.');
    const path = join(folder, `${number}${slug(line)}.bay`);
    if (shell.kind(path) !== undefined)
      throw new CannotRun(`${relativeTo(shell.folder, path)} is there already; nothing was changed`);
    const day = dayOf(shell.now());
    shell.write(path, STARTERS[options.kind].text({ number, title: line, day }));
    shell.out.write(`${relativeTo(shell.folder, path)}\n`);
    shell.err.write(`Open ${fileName(path)}, put in the job, then run \`baywright check\`.\n`);
    return 0;
  },
});

const LONGEST_SLUG = 60;

/** A title as part of a file name: small letters and digits of any script, accents taken off, joined by hyphens. */
function slug(title: string): string {
  const words = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu);
  return words === null ? '' : `-${words.join('-').slice(0, LONGEST_SLUG).replace(/-$/, '')}`;
}
