// The options of `build`, and the prints of a procedure that they ask for.
import { type Analysis, allThings, clausesOf, type Language, phrase } from '@baywright/language';
import { SHEETS } from '../../document/document.js';
import { PRINTS } from '../../print-options.js';
import { choice, count, flag, list, type OptionValues, text } from '../command.js';
import { readLanguage } from '../given.js';
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
  archive: flag(
    '--archive',
    'PDFs in the form for archives, PDF/A-2a, beside those for readers, which are PDF/UA-1',
  ),
  watch: flag('-w, --watch', 'make guides again whenever a file changes, until ended'),
  jobs: count('-j, --jobs <count>', 'how many threads may work; 0 for as many as the machine has', 0),
  fresh: flag('--fresh', 'make every guide again, whatever is kept from the last run'),
  tidy: flag('--tidy', 'delete guides of earlier builds that nothing prints any more'),
  json: flag('--json', 'say what was made as JSON'),
};
export type Options = OptionValues<typeof OPTIONS>;

/** What is asked for, without what only tells how a run goes. */
export function askedOf(options: Options): Omit<Options, 'json' | 'fresh' | 'watch' | 'jobs' | 'tidy'> {
  const { json: _json, fresh: _fresh, watch: _watch, jobs: _jobs, tidy: _tidy, ...asked } = options;
  return asked;
}

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
  archive: false,
  watch: false,
  jobs: 0,
  fresh: false,
  tidy: false,
  json: false,
};

/** Complains of options that do not go together, before any guide is made. */
export function checkChoices({ only, at, option, language }: Options): void {
  if (only === 'off-now' && at === undefined)
    throw new CannotRun('say before which line the work stopped: --only off-now --at 40');
  if (only !== 'off-now' && at !== undefined)
    throw new CannotRun('--at goes with --only off-now, the sheet of what is off before a line');
  if (at !== undefined && !/^[1-9]\d*$/.test(at)) throw new CannotRun(`“${at}” is no line number`);
  readOptions(option);
  for (const code of language) readLanguage(code);
}

/** The guides of a procedure: for each side and both, in each language; none, with the reason, where it has no such print. */
export function wantedOf(
  epoch: string | undefined,
  shelf: Shelf,
  analysis: Analysis,
  options: Options,
): { readonly prints: readonly (readonly [Wanted, string])[]; readonly problem?: string } {
  const { settings } = shelf;
  const { sides } = analysis.model;
  const timestamp = readEpoch(epoch);
  const problem = strangeTo(analysis, options);
  if (problem !== undefined) return { prints: [], problem };
  const all: (string | undefined)[] = sides.length > 1 ? [...sides, 'both'] : [undefined];
  const asked = options.side === undefined || sides.length === 0 ? all : [options.side];
  const languages = options.language.length > 0 ? options.language.map(readLanguage) : settings.languages;
  const page = options.page === 'settings' ? settings.page : options.page;
  const units = {
    settings: settings.units,
    metric: 'metric first',
    US: 'US first',
    written: 'as written',
  } as const;
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
          standard: options.archive ? 'a-2a' : 'ua-1',
          ...(timestamp === undefined ? {} : { timestamp }),
        },
      },
      [sideIn(side, settings.languages[0]), languages.length > 1 ? language : undefined]
        .filter((part) => part !== undefined)
        .join(' '),
    ]),
  );
  return { prints };
}

/** The list of guides is in the language of the shop, whatever the guides are in. */
function sideIn(side: string | undefined, language: Language = 'en'): string | undefined {
  if (side === 'left') return phrase('side-left', language);
  if (side === 'right') return phrase('side-right', language);
  return side === 'both' ? phrase('both-sides', language) : side;
}

/** A side, a line or a value of an option that this procedure does not have, in words behind its name. */
function strangeTo(analysis: Analysis, { side, at, option }: Options): string | undefined {
  const { sides } = analysis.model;
  if (side !== undefined && sides.length > 0 && side !== 'both' && !sides.includes(side))
    return `it has no side “${side}”; it has ${sides.join(', ')}`;
  const lines = analysis.text.split('\n').length;
  if (at !== undefined && Number(at) > lines) return `it has ${lines} lines, no line ${at}`;
  for (const [name, value] of Object.entries(readOptions(option))) {
    const known = optionsOf(analysis).get(name);
    if (known !== undefined && !known.has(value))
      return `none of its vehicles has the ${name} “${value}”; they have ${[...known].join(', ')}`;
  }
  return undefined;
}

/** Options asked for that no vehicle of this procedure has. */
export function unknownOptions(analysis: Analysis, { option }: Options): string[] {
  if (option.length === 0) return [];
  const known = optionsOf(analysis);
  return Object.keys(readOptions(option)).filter((name) => !known.has(name));
}

/** What the vehicles that a procedure applies to differ in. */
function optionsOf({ model, job }: Analysis): ReadonlyMap<string, ReadonlySet<string>> {
  const names = new Set(model.applies.flatMap(({ vehicle }) => vehicle?.text ?? []));
  const options = new Map<string, Set<string>>();
  for (const thing of allThings(job.scopes))
    if (thing.kind === 'vehicle' && names.has(thing.name))
      for (const { clause } of clausesOf(thing, 'option')) {
        const [name, ...values] = clause.words.map(({ text: word }) => word);
        if (name !== undefined) options.set(name, new Set([...(options.get(name) ?? []), ...values]));
      }
  const vehicle = job.universe.axis('vehicle');
  if (vehicle) options.set(vehicle.name, new Set(vehicle.values));
  return options;
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

function readEpoch(value: string | undefined): number | undefined {
  if (value === undefined || value === '') return undefined;
  if (!/^\d{1,11}$/.test(value))
    throw new CannotRun(`SOURCE_DATE_EPOCH is “${value}”: seconds since 1970 are expected`);
  return Number(value);
}

/** The offset at which a line begins. */
function offsetOf(source: string, line: string | undefined): number | undefined {
  if (line === undefined) return undefined;
  return source
    .split('\n')
    .slice(0, Number(line) - 1)
    .reduce((sum, one) => sum + one.length + 1, 0);
}
