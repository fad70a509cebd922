// The command's front: reads the command line, runs one row of the table, turns every outcome into an exit code.
import { VERSION } from '@baywright/language';
import { CommanderError, InvalidArgumentError, Command as Parser, Option as ParserOption } from 'commander';
import picocolors from 'picocolors';
import type { Colors } from 'picocolors/types.js';
import type { CommandDef, Option } from './command.js';
import { COMMANDS } from './commands/index.js';
import { faultWords } from './reasons.js';
import { CannotRun, type Shell, type Stream } from './shell.js';

/** Exit codes that scripts may rely on; 1 is a command's own answer, that it found something. */
const CLEAN = 0;
export const COULD_NOT_RUN = 2;

/** Runs one command line (without the program's own name) and returns the exit code. Never throws. */
export async function run(argv: readonly string[], shell: Shell): Promise<number> {
  const when = colourChoice(argv);
  const paintErr = colours(shell.err, shell, when);
  let code = CLEAN;
  const parser = program(shell, when, (result) => {
    code = result;
  });
  try {
    await parser.parseAsync(argv.map(keepMinus), { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? CLEAN : COULD_NOT_RUN;
    shell.err.write(`${paintErr.red('baywright:')} ${apology(error, argv)}\n`);
    return COULD_NOT_RUN;
  }
}

/** `-40 °C` is a quantity, not an option: no option begins with a digit. */
const keepMinus = (arg: string): string => arg.replace(/^-(?=\.?\d)/, '\u2212');

function apology(error: unknown, argv: readonly string[]): string {
  if (error instanceof CannotRun) return error.message;
  if (argv.includes('--trace') && error instanceof Error) return error.stack ?? faultWords(error);
  return `this is a fault of Baywright itself: ${faultWords(error)}. Nothing was left half written. Please report it with the output of the same command and --trace.`;
}

function program(shell: Shell, when: ColourChoice, done: (code: number) => void): Parser {
  const paint = colours(shell.out, shell, when);
  const paintErr = colours(shell.err, shell, when);
  const parser = new Parser('baywright')
    .description('Checks house repair procedures and makes their shop guides.')
    .version(VERSION, '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [command]', 'print this help, or that of a command')
    .exitOverride()
    .showSuggestionAfterError()
    .showHelpAfterError('`baywright --help` lists what there is.')
    .configureOutput({
      writeOut: (text) => shell.out.write(text),
      writeErr: (text) => shell.err.write(text),
      getOutHelpWidth: () => Math.min(shell.out.columns, 100),
      getErrHelpWidth: () => Math.min(shell.err.columns, 100),
      getOutHasColors: () => paint.isColorSupported,
      getErrHasColors: () => paintErr.isColorSupported,
      outputError: (text, write) => write(text.replace(/^error: /, `${paintErr.red('baywright:')} `)),
    })
    .configureHelp({ styleTitle: (title) => paint.bold(title), commandUsage: usage })
    .addHelpText('after', `\n${EXIT_CODES}\n\n\`baywright COMMAND --help\` tells more about a command.`);
  for (const def of COMMANDS) {
    const command = parser.command(def.name).summary(def.summary).description(def.docs);
    command
      .helpOption('-h, --help', 'print this help')
      .showHelpAfterError(`\`baywright ${def.name} --help\` tells what it takes.`)
      .configureHelp({ styleTitle: (title) => paint.bold(title) });
    for (const { name, docs, optional, many } of def.takes) {
      const inner = `${name}${many ? '...' : ''}`;
      command.argument(optional ? `[${inner}]` : `<${inner}>`, docs);
    }
    for (const option of Object.values(def.options)) command.addOption(parserOption(option));
    command.addOption(parserOption(COLOUR)).addOption(parserOption(TRACE));
    command.addHelpText('after', `\n${paint.bold('Examples:')}\n${examples(def)}`);
    command.action(async (...given: unknown[]) => {
      const args = given
        .slice(0, def.takes.length)
        .flat()
        .filter((arg): arg is string => typeof arg === 'string');
      done(await def.run({ shell, paint, paintErr, commands: COMMANDS }, args, optionValues(def, command)));
    });
  }
  return parser;
}

const usage = (command: { name(): string; usage(): string }): string => `${command.name()} COMMAND [options]`;

const EXIT_CODES = 'Exit codes: 0 in order, 1 findings, 2 could not run.';
const COLOUR = {
  kind: 'choice',
  flags: '--color <when>',
  docs: 'colour the output; NO_COLOR and TERM=dumb turn auto off',
  values: ['auto', 'always', 'never'],
  usual: 'auto',
} as const;
const TRACE = {
  kind: 'flag',
  flags: '--trace',
  docs: 'show where in Baywright an unexpected failure arose',
} as const;

function examples(def: CommandDef): string {
  const width = Math.max(...def.examples.map(([line]) => line.length));
  return def.examples.map(([line, docs]) => `  ${line.padEnd(width)}  ${docs}`).join('\n');
}

function parserOption(option: Option): ParserOption {
  const made = new ParserOption(option.flags, option.docs);
  switch (option.kind) {
    case 'choice':
      return made.choices(option.values).default(option.usual);
    case 'count':
      return made.default(option.usual).argParser(wholeNumber);
    case 'list':
      return made.argParser((value: string, before: readonly string[] = []) => [...before, value]);
    default:
      return made;
  }
}

function wholeNumber(text: string): number {
  if (!/^\d{1,9}$/.test(text)) throw new InvalidArgumentError('A whole number is expected.');
  return Number(text);
}

/** Options under the names that the table gives them; a flag that was not given is false, a list is empty. */
function optionValues(def: CommandDef, command: Parser): Record<string, never> {
  const values = Object.entries(def.options).map(([name, option]) => {
    const value: unknown = command.getOptionValue(parserOption(option).attributeName());
    return [name, option.kind === 'flag' ? value === true : option.kind === 'list' ? (value ?? []) : value];
  });
  return Object.fromEntries(values);
}

type ColourChoice = 'auto' | 'always' | 'never';

/** Read ahead of the parser, so that complaints about the command line have the right colours too. */
function colourChoice(argv: readonly string[]): ColourChoice {
  const at = argv.findLastIndex((arg) => arg === '--color' || arg.startsWith('--color='));
  const value = argv[at]?.includes('=') ? argv[at]?.slice('--color='.length) : argv[at + 1];
  return at >= 0 && (value === 'always' || value === 'never') ? value : 'auto';
}

function colours(stream: Stream, shell: Shell, when: ColourChoice): Colors {
  const wanted = stream.isTerminal && !shell.env.NO_COLOR && shell.env.TERM !== 'dumb';
  return picocolors.createColors(when === 'auto' ? wanted : when === 'always');
}
