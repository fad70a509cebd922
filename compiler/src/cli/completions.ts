// Scripts that let a shell complete the command line, made from the table of commands.
import type { CommandDef, Option } from './command.js';

export const SHELLS = ['bash', 'zsh', 'fish', 'powershell'] as const;
export type ShellName = (typeof SHELLS)[number];

export function completionScript(shell: ShellName, commands: readonly CommandDef[]): string {
  return SCRIPTS[shell](commands);
}

const SCRIPTS: Readonly<Record<ShellName, (commands: readonly CommandDef[]) => string>> = {
  bash: bashScript,
  // zsh reads bash completions through its own bridge, which stands on its own completion.
  zsh: (commands) =>
    `(( $+functions[compdef] )) || { autoload -Uz compinit && compinit }\nautoload -U +X bashcompinit && bashcompinit\n${bashScript(commands)}`,
  fish: fishScript,
  powershell: powershellScript,
};

/** `--format` of `-f, --format <form>`. */
const longFlag = (option: Option): string => /--[a-z-]+/.exec(option.flags)?.[0] ?? option.flags;
const optionsOf = (def: CommandDef): Option[] => Object.values(def.options);
const valuesOf = (option: Option): readonly string[] => (option.kind === 'choice' ? option.values : []);

function bashScript(commands: readonly CommandDef[]): string {
  const cases = commands.map(
    (def) => `    ${def.name}) words="${[...optionsOf(def).map(longFlag), '--help'].join(' ')}" ;;`,
  );
  const words = commands.flatMap((def) =>
    def.takes.flatMap(({ values = [] }, i) =>
      values.length === 0 ? [] : [`    ${def.name}:${i + 2}) words="${values.join(' ')}" ;;`],
    ),
  );
  const values = commands.flatMap((def) =>
    optionsOf(def)
      .filter((option) => option.kind === 'choice')
      .map(
        (option) =>
          `    ${def.name}:${longFlag(option)}) words="${valuesOf(option)
            .filter((value) => !value.includes(' '))
            .join(' ')}" ;;`,
      ),
  );
  return `_baywright() {
  local current="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD-1]}" words=""
  if [ "$COMP_CWORD" -eq 1 ]; then
    COMPREPLY=($(compgen -W "${commands.map((def) => def.name).join(' ')} --help --version" -- "$current"))
    return
  fi
  case "\${COMP_WORDS[1]}:$before" in
${values.join('\n')}
  esac
  if [ -z "$words" ] && [ "\${current#-}" = "$current" ]; then case "\${COMP_WORDS[1]}:$COMP_CWORD" in
${words.join('\n')}
  esac; fi
  if [ -z "$words" ]; then case "\${COMP_WORDS[1]}" in
${cases.join('\n')}
  esac; fi
  case "$current:$words" in
    -*|*:[!-]?*) COMPREPLY=($(compgen -W "$words" -- "$current")) ;;
    *) local IFS=$'\\n'; COMPREPLY=($(compgen -f -- "$current")) ;;
  esac
}
complete -o filenames -F _baywright baywright
`;
}

function fishScript(commands: readonly CommandDef[]): string {
  const quoted = (text: string): string => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;
  const lines = commands.flatMap((def) => [
    `complete -c baywright -n __fish_use_subcommand -f -a ${def.name} -d ${quoted(def.summary)}`,
    ...def.takes.flatMap(({ values = [] }) =>
      values.length === 0
        ? []
        : [
            `complete -c baywright -n '__fish_seen_subcommand_from ${def.name}' -f -a ${quoted(values.join(' '))}`,
          ],
    ),
    ...optionsOf(def).map((option) => {
      const values = valuesOf(option);
      const value =
        option.kind === 'flag' ? '' : values.length === 0 ? ' -r' : ` -x -a ${quoted(values.join(' '))}`;
      return `complete -c baywright -n '__fish_seen_subcommand_from ${def.name}' -l ${longFlag(option).slice(2)}${value} -d ${quoted(option.docs)}`;
    }),
  ]);
  return `${lines.join('\n')}\n`;
}

function powershellScript(commands: readonly CommandDef[]): string {
  const rows = commands.map(
    (def) =>
      `    '${def.name}' = @(${[...optionsOf(def).map(longFlag), '--help'].map((flag) => `'${flag}'`).join(', ')})`,
  );
  return `Register-ArgumentCompleter -Native -CommandName baywright -ScriptBlock {
  param($word, $ast, $cursor)
  $commands = [ordered]@{
${rows.join('\n')}
  }
  $typed = @($ast.CommandElements | ForEach-Object { $_.ToString() })
  $offered = if ($typed.Count -gt 1 -and $commands.Contains($typed[1])) { $commands[$typed[1]] } else { $commands.Keys }
  $offered | Where-Object { $_ -like "$word*" } | ForEach-Object { [System.Management.Automation.CompletionResult]::new($_) }
}
`;
}
