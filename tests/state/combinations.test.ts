// All combinations at once give what each combination gives alone: procedures are generated at random with guarded lines, run
// once with all options, and once for each combination with the guards resolved in the text.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createLibrary } from '../../language/src/analysis.js';
import type { Analysis } from '../../language/src/library.js';
import { DEFAULT_SETTINGS } from '../../language/src/settings/index.js';
import { directionOf } from '../../language/src/state/wants.js';

const OPTIONS = ['axle', 'engine', 'roof'] as const;
const VALUES: Readonly<Record<string, readonly [string, string]>> = {
  axle: ['light', 'heavy'],
  engine: ['petrol', 'diesel'],
  roof: ['low', 'high'],
};

type Choice = Readonly<Record<string, string>>;
interface Guard {
  readonly option: string;
  readonly value: string;
}
interface Row {
  readonly code: string;
  readonly guard: Guard | undefined;
}

const ACTS = [
  'remove bolt',
  'remove cover',
  'remove nut',
  'remove lid',
  'install cover',
  'install bolt',
  'install lid',
  'install nut',
  'torque bolt',
  'torque nut',
  'loosen bolt',
  'loosen clip',
  'disconnect plug',
  'connect plug',
  'hang cover',
  'place rag',
  'remove rag',
  'drain oil',
  'fill oil',
  'set lever up',
  'set lever down',
  'chock wheels',
  'unchock wheels',
  'raise vehicle',
  'lower vehicle',
  'remove 2 of bolt',
  'install 2 of bolt',
  'snug bolt',
  'clean face',
  'apply paste to face',
  'wait 10 min',
  'check-level oil',
  'road-test vehicle, 1 km',
  'remove drain',
  'install drain',
  'torque drain',
  'adjust play',
];

const guard = fc
  .constantFrom(...OPTIONS)
  .chain((option) => fc.constantFrom(...(VALUES[option] ?? [])).map((value): Guard => ({ option, value })));
const rows = fc.array(
  fc.record({ code: fc.constantFrom(...ACTS), guard: fc.option(guard, { nil: undefined, freq: 2 }) }),
  { minLength: 3, maxLength: 14 },
);
const heldGuard = fc.option(guard, { nil: undefined, freq: 2 });

/** The procedure; with a choice, its guards are resolved and its options gone. */
function procedure(list: readonly Row[], held: Guard | undefined, choice: Choice | undefined): string {
  const holds = (g: Guard | undefined): boolean => !g || !choice || choice[g.option] === g.value;
  const tail = (g: Guard | undefined): string => (g && !choice ? `, when ${g.option} ${g.value}` : '');
  const lines = list.filter((r) => holds(r.guard)).map((r) => `    ${r.code}${tail(r.guard)}`);
  return `procedure A-1: Generated
applies to van
vehicles
  van: Van
    years 2018 to 2025
${choice ? '' : OPTIONS.map((o) => `    option ${o} ${VALUES[o]?.join(', ')}\n`).join('')}parts
  cover: Cover
    held by bolt
${holds(held) ? `    behind lid${tail(held)}\n` : ''}    sealed with paste, on face
  lid: Lid
    held by nut
fasteners
  bolt: Bolts
    4 of M8x1.25
    torque 20 N·m
  nut: Nut
    1 of M8x1.25
    torque 20 N·m
    renew
  clip: Clip
    1 of clip
  drain: Drain plug
    1 of M14x1.5
    torque 30 N·m
connections
  plug: Plug
    on cover, clamped by clip
fluids
  oil: Oil
    fill 2 L, drain at drain, settle 5 min
adjustments
  play: Play
    disturbed by lid
conditions
  lever: Lever
    down, up
supplies
  paste: Paste
    sealant, fill after 20 min, fit within 10 min
temporary
  rag: Rag
    behind cover
places
  face: Face
  wheels: Wheels

removal
  step: All
${lines.length > 0 ? lines.join('\n') : '    wait 1 min'}
`;
}

function analyse(text: string): Analysis {
  const library = createLibrary(
    { read: (p) => (p === 'a.bay' ? text : undefined), list: () => ['a.bay'] },
    DEFAULT_SETTINGS,
  );
  const analysis = library.analyse('a.bay');
  if (!analysis?.run) throw new Error('no run');
  expect(analysis.findings.filter((f) => f.code.startsWith('G')).map((f) => f.message)).toEqual([]);
  return analysis;
}

/** What is told on one combination: the thing, the state it lacks, and whether that came late. */
function toldOn(analysis: Analysis, choice: Choice): string[] {
  const { run, job } = analysis;
  if (!run) return [];
  const { diagrams, axes } = job.universe;
  const at = new Map(
    axes
      .filter((a) => a.kind === 'option')
      .map((a) => [a.variable.index, a.values.indexOf(choice[a.name] ?? '')]),
  );
  const told = run.deficits
    .filter((d) => !d.silent)
    .flatMap((d) =>
      d.lacks
        .filter((l) => diagrams.holds(l.when, at))
        .map((l) => {
          const arrived =
            directionOf(l.want) === 'together' && diagrams.holds(d.arrived.get(l.thing) ?? 0, at);
          return `${l.thing.name} ${l.want}${arrived ? ' late' : ''}`;
        }),
    );
  return [...new Set(told)].sort();
}

function combinations(): Choice[] {
  return OPTIONS.reduce<Choice[]>(
    (all, option) => all.flatMap((c) => (VALUES[option] ?? []).map((value) => ({ ...c, [option]: value }))),
    [{}],
  );
}

test('all combinations at once tell what each tells alone', () => {
  fc.assert(
    fc.property(rows, heldGuard, (list, held) => {
      const together = analyse(procedure(list, held, undefined));
      for (const choice of combinations()) {
        const alone = analyse(procedure(list, held, choice));
        expect({ choice, told: toldOn(together, choice) }).toEqual({ choice, told: toldOn(alone, choice) });
      }
    }),
    { numRuns: 400, seed: 20261005 },
  );
});
