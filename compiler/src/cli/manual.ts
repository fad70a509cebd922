// The manual page, made from the table of commands: `man ./baywright.1`. In the macros of man(7).
import { VERSION } from '@baywright/language';
import type { Argument, CommandDef, Option } from './command.js';

export function manualPage(commands: readonly CommandDef[]): string {
  return `${[
    `.TH BAYWRIGHT 1 "" "Baywright ${VERSION}" "User Commands"`,
    '.SH NAME',
    'baywright \\- check house repair procedures and make their shop guides',
    '.SH SYNOPSIS',
    '.B baywright',
    '.I COMMAND',
    '[options]',
    '.SH DESCRIPTION',
    'Works on procedures and catalogues, text files that end in .bay, and on the library they lie in: the nearest folder upward with a file baywright.json.',
    '.SH COMMANDS',
    ...commands.flatMap(section),
    '.SH EXIT STATUS',
    ...entry('0', 'In order.'),
    ...entry('1', 'Findings: what was asked for is not in order. Each command says what counts.'),
    ...entry('2', 'Could not run: the command line, a file or the system stood in the way.'),
    '.SH ENVIRONMENT',
    ...entry('NO_COLOR', 'Set to anything: no colour. TERM=dumb does the same.'),
    ...entry(
      'SOURCE_DATE_EPOCH',
      'Seconds since 1970 for the time stamp in a PDF, so that two builds are alike.',
    ),
    ...entry(
      'XDG_CACHE_HOME',
      'Where the compiled program is kept, and findings for a library that cannot be written to; ~/.cache where not set.',
    ),
    '.SH FILES',
    ...entry('baywright.json', 'The settings of a library; it marks its root.'),
    ...entry('.cache/baywright/', 'What the last check found. It may be deleted at any time.'),
    ...entry(
      '~/.cache/baywright/',
      'The program as it was compiled last, so that it starts sooner. It may be deleted at any time.',
    ),
    ...entry('issued/', 'What was issued, one folder for each number and revision. It is never changed.'),
  ].join('\n')}\n`;
}

function section({ name, docs, takes, options, examples }: CommandDef): string[] {
  return [
    `.SS baywright ${escaped(name)}${takes.map(argument).join('')}`,
    ...docs.split('\n\n').flatMap((paragraph) => ['.PP', escaped(paragraph)]),
    ...takes.flatMap((one) => entry(one.name, sentence(one.docs))),
    ...Object.values(options).flatMap((option) =>
      entry(option.flags, `${sentence(option.docs)}${values(option)}`),
    ),
    ...examples.flatMap(([line, said]) => [
      '.PP',
      `${escaped(sentence(said))}`,
      '.RS',
      '.nf',
      escaped(line),
      '.fi',
      '.RE',
    ]),
  ];
}

const argument = ({ name, optional, many }: Argument): string => {
  const inner = `${name}${many ? '...' : ''}`;
  return escaped(optional ? ` [${inner}]` : ` <${inner}>`);
};

const entry = (term: string, words: string): string[] => ['.TP', `.B ${escaped(term)}`, escaped(words)];

const sentence = (words: string): string =>
  `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.?!]$/.test(words) ? '' : '.'}`;

function values(option: Option): string {
  if (option.kind === 'choice')
    return ` One of ${option.values.join(', ')}; ${option.usual} where not given.`;
  return option.kind === 'count' ? ` ${option.usual} where not given.` : '';
}

/** A backslash starts a macro's escape, a dot or quote at the start of a line a macro, a hyphen is not a minus. */
function escaped(text: string): string {
  return text
    .replaceAll('\\', '\\e')
    .replaceAll('-', '\\-')
    .replace(/^(?=[.'])/gm, '\\&');
}
