// The shape of a command: one file each, one row in the table. Help, parsing and completions read it.
import type { Colors } from 'picocolors/types.js';
import type { Shell } from './shell.js';

export interface FlagOption {
  readonly kind: 'flag';
  readonly flags: string;
  readonly docs: string;
}
export interface ChoiceOption<Values extends readonly string[] = readonly string[]> {
  readonly kind: 'choice';
  readonly flags: string;
  readonly docs: string;
  readonly values: Values;
  readonly usual: Values[number];
}
export interface TextOption {
  readonly kind: 'text';
  readonly flags: string;
  readonly docs: string;
}
export interface ListOption {
  readonly kind: 'list';
  readonly flags: string;
  readonly docs: string;
}
export interface CountOption {
  readonly kind: 'count';
  readonly flags: string;
  readonly docs: string;
  readonly usual: number;
}
export type Option = FlagOption | ChoiceOption | TextOption | ListOption | CountOption;
export type OptionTable = Readonly<Record<string, Option>>;

export const flag = (flags: string, docs: string): FlagOption => ({ kind: 'flag', flags, docs });
export const text = (flags: string, docs: string): TextOption => ({ kind: 'text', flags, docs });
/** May be given more than once. */
export const list = (flags: string, docs: string): ListOption => ({ kind: 'list', flags, docs });
export const count = (flags: string, docs: string, usual: number): CountOption => ({
  kind: 'count',
  flags,
  docs,
  usual,
});
export const choice = <const Values extends readonly string[]>(
  flags: string,
  docs: string,
  values: Values,
  usual: Values[number],
): ChoiceOption<Values> => ({ kind: 'choice', flags, docs, values, usual });

type ValueOf<O extends Option> = O extends FlagOption
  ? boolean
  : O extends ChoiceOption<infer Values>
    ? Values[number]
    : O extends ListOption
      ? readonly string[]
      : O extends CountOption
        ? number
        : string | undefined;
export type OptionValues<Options extends OptionTable> = {
  readonly [Name in keyof Options]: ValueOf<Options[Name]>;
};

export interface Argument {
  /** As shown in help, without brackets. */
  readonly name: string;
  readonly docs: string;
  /** The words it takes, where those are few. */
  readonly values?: readonly string[];
  readonly optional?: true;
  /** Takes all that follows; last argument only. */
  readonly many?: true;
}

/** The files and folders that most commands take. */
export const PATHS: Argument = {
  name: 'paths',
  docs: 'files and folders; the current folder where none is given',
  optional: true,
  many: true,
};

/** What a running command works with. */
export interface Context {
  readonly shell: Shell;
  /** Colours for standard output, and for standard error. */
  readonly paint: Colors;
  readonly paintErr: Colors;
  /** The whole table, for what is made from it. */
  readonly commands: readonly CommandDef[];
}

export interface CommandDef<Options extends OptionTable = OptionTable> {
  readonly name: string;
  /** One line for the list of commands. */
  readonly summary: string;
  /** What it does and what its exit code means, in short paragraphs. */
  readonly docs: string;
  readonly takes: readonly Argument[];
  readonly options: Options;
  /** Command lines with what they are for. */
  readonly examples: readonly (readonly [line: string, docs: string])[];
  /** Returns the exit code: 0 in order, 1 findings, 2 could not run. */
  run(context: Context, args: readonly string[], options: OptionValues<Options>): number | Promise<number>;
}

export function defineCommand<const Options extends OptionTable>(
  def: CommandDef<Options>,
): CommandDef<Options> {
  return Object.freeze(def);
}
