// The page of the command line, made from its table: what each command does, takes and gives back.
import type { CommandDef, Option } from '../../compiler/src/cli/command.js';
import { COMMANDS } from '../../compiler/src/cli/commands/index.js';

export function commandsPage(): string {
  const blocks = [
    '# The command line',
    '<!-- Made from the table of commands by `npm run generate`. Change the table, not this page. -->',
    'Exit codes: 0 in order, 1 findings, 2 could not run. Every command has `--help`.',
    COMMANDS.map(({ name, summary }) => `- [\`baywright ${name}\`](#baywright-${name}): ${summary}`).join(
      '\n',
    ),
    ...COMMANDS.flatMap(commandBlocks),
  ];
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

function commandBlocks(def: CommandDef): string[] {
  const takes = def.takes.map(({ name, optional, many }) => {
    const inner = `${name}${many ? '...' : ''}`;
    return optional ? `[${inner}]` : `<${inner}>`;
  });
  const rows = [
    ...def.takes.map(({ name, docs }) => [`\`${name}\``, docs]),
    ...Object.values(def.options).map((option) => [`\`${option.flags}\``, optionWords(option)]),
  ].map(([word = '', docs = '']) => `| ${word.replaceAll('|', '\\|')} | ${docs.replaceAll('|', '\\|')} |`);
  return [
    `## baywright ${def.name}`,
    `\`${['baywright', def.name, ...takes].join(' ')}\``,
    def.docs,
    rows.length === 0 ? '' : ['| | |', '| --- | --- |', ...rows].join('\n'),
    ['```sh', ...def.examples.map(([line, docs]) => `${line}  # ${docs}`), '```'].join('\n'),
  ];
}

function optionWords(option: Option): string {
  if (option.kind === 'choice')
    return `${option.docs}: ${option.values.map((value) => `\`${value}\``).join(', ')}; \`${option.usual}\` where not given`;
  return option.kind === 'count' ? `${option.docs}; ${option.usual} where not given` : option.docs;
}
