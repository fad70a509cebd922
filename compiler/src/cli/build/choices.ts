// The options of `build`, and the prints of a procedure that they ask for.
import { type Analysis, LANGUAGES, type Language } from '@baywright/language';
import { SHEETS } from '../../document/document.js';
import { PRINTS } from '../../print-options.js';
import { choice, flag, list, type OptionValues, text } from '../command.js';
import type { Shelf } from '../libraries.js';
import { FORMATS, type Format, type Wanted } from '../publish.js';
import { CannotRun } from '../shell.js';

const UNITS = ['settings', 'metric', 'US', 'written'] as const;
const PAGES = ['settings', 'A4', 'Letter'] as const;

export const OPTIONS = {
  out: text(
    '-o, --out <folder>',
    'where guides are written; the output folder of baywright.json where not given',
  ),
  format: list('-f, --format <forms>', 'html, pdf or both: "html,pdf", which is usual; may be repeated'),
  only: choice('--only <sheet>', 'one sheet in place of the guide', SHEETS, 'guide'),
  at: text('--at <line>', 'with --only off-now: the line of the source before which the work stopped'),
  side: text('--side <side>', 'left, right or both; usual is a guide for each side and one for both'),
  option: list('--option <name=value>', 'an option of the vehicle, such as axle=heavy; may be repeated'),
  page: choice('--page <paper>', 'the paper', PAGES, 'settings'),
  units: choice('--units <system>', 'which system stands first', UNITS, 'settings'),
  print: choice(
    '--print <kind>',
    'bay is short, training tells why, walk leaves room to write',
    PRINTS,
    'bay',
  ),
  language: list('--language <code>', 'en, es, fr or de; the languages of baywright.json where not given'),
  colour: flag('--colour', 'one accent colour in print; black carries all meaning without it'),
  safetyColours: flag(
    '--safety-colours',
    'signal words in the colours of the safety standards; baywright.json can switch them on for good',
  ),
  twoSided: flag(
    '--two-sided',
    'for paper printed on both sides: the binding edge alternates, the record is a sheet of its own',
  ),
  json: flag('--json', 'say what was made as JSON'),
};
export type Options = OptionValues<typeof OPTIONS>;

/** What is printed where nothing else is asked for. */
export const USUAL: Options = {
  out: undefined,
  format: [],
  only: OPTIONS.only.usual,
  at: undefined,
  side: undefined,
  option: [],
  page: OPTIONS.page.usual,
  units: OPTIONS.units.usual,
  print: OPTIONS.print.usual,
  language: [],
  colour: false,
  safetyColours: false,
  twoSided: false,
  json: false,
};

/** The guides of a procedure: for each side and both, in each language. */
export function wantedOf(
  epoch: string | undefined,
  shelf: Shelf,
  analysis: Analysis,
  options: Options,
): { readonly prints: readonly (readonly [Wanted, string])[]; readonly problem?: string } {
  const { settings } = shelf;
  const { sides } = analysis.model;
  const timestamp = readEpoch(epoch);
  const all: (string | undefined)[] = sides.length > 1 ? [...sides, 'both'] : [undefined];
  const asked = options.side === undefined || sides.length === 0 ? all : [options.side];
  const isUnknown =
    options.side !== undefined &&
    sides.length > 0 &&
    options.side !== 'both' &&
    !sides.includes(options.side);
  const languages = options.language.length > 0 ? options.language.map(readLanguage) : settings.languages;
  const page = options.page === 'settings' ? settings.page : options.page;
  const units = {
    settings: settings.units,
    metric: 'metric first',
    US: 'US first',
    written: 'as written',
  } as const;
  if (isUnknown) return { prints: [], problem: `has no side “${options.side}”; it has ${sides.join(', ')}` };
  const at = offsetOf(analysis.text, options.at);
  const prints = languages.flatMap((language) =>
    asked.map((side): [Wanted, string] => [
      {
        choice: {
          sheet: options.only,
          ...(side === undefined ? {} : { side }),
          option: optionsFor(analysis, readOptions(options.option)),
          units: units[options.units],
          language,
          ...(at === undefined ? {} : { at }),
        },
        print: {
          paper: page === 'A4' ? 'a4' : 'letter',
          print: options.print,
          colour: options.colour,
          safetyColours: options.safetyColours || settings.print.safetyColours,
          twoSided: options.twoSided || settings.print.twoSided,
          ...(timestamp === undefined ? {} : { timestamp }),
        },
      },
      [side, languages.length > 1 ? language : undefined].filter((part) => part !== undefined).join(' '),
    ]),
  );
  return { prints };
}

/** The options that this procedure knows: one command prints a library in which only some have an axle. */
function optionsFor(analysis: Analysis, option: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(option).filter(([name]) => analysis.job.universe.axis(name) !== undefined),
  );
}

export function readFormats(given: readonly string[]): readonly Format[] {
  const names = given.flatMap((one) => one.split(',')).map((one) => one.trim());
  const unknown = names.find((name) => !FORMATS.some((format) => format === name));
  if (unknown !== undefined)
    throw new CannotRun(`there is no format “${unknown}”; there are ${FORMATS.join(' and ')}`);
  const formats = FORMATS.filter((format) => names.includes(format));
  return formats.length === 0 ? FORMATS : formats;
}

function readOptions(given: readonly string[]): Record<string, string> {
  const pairs = given.map((one): [string, string] => {
    const match = /^([^=\s]+)=([^=\s]+)$/.exec(one);
    if (!match?.[1] || !match[2])
      throw new CannotRun(`“${one}” is no option of a vehicle; write name=value, as in axle=heavy`);
    return [match[1], match[2]];
  });
  return Object.fromEntries(pairs);
}

function readLanguage(code: string): Language {
  const language = LANGUAGES.find((known) => known === code);
  if (language === undefined)
    throw new CannotRun(`there is no language “${code}”; there are ${LANGUAGES.join(', ')}`);
  return language;
}

function readEpoch(value: string | undefined): number | undefined {
  if (value === undefined || value === '') return undefined;
  if (!/^\d{1,11}$/.test(value))
    throw new CannotRun(`SOURCE_DATE_EPOCH is “${value}”: seconds since 1970 are expected`);
  return Number(value);
}

/** The offset at which a line begins. */
function offsetOf(source: string, line: string | undefined): number | undefined {
  if (line === undefined) return undefined;
  if (!/^[1-9]\d*$/.test(line)) throw new CannotRun(`“${line}” is no line number`);
  return source
    .split('\n')
    .slice(0, Number(line) - 1)
    .reduce((sum, one) => sum + one.length + 1, 0);
}
