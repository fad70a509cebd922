// Completion behind `when`: options of the vehicles, then their values.
import type { Snapshot } from '../../snapshot.js';
import { type Offer, value, word } from './answer.js';

export function guardOffers(snapshot: Snapshot, text: string): Offer[] {
  const options = optionsIn(snapshot);
  const term = text.split(/\band\s/).pop() ?? '';
  const [option, ...rest] = term.trim().split(/\s+/);
  if (option === undefined || option === '' || (!/\s$/.test(term) && rest.length === 0)) {
    return [...options].map(([name, values]) =>
      word(name, values.join(', '), { insert: `${name} `, goesOn: true }),
    );
  }
  const values = options.get(option) ?? [];
  if (rest.length === 0 || rest.at(-1) === 'or')
    return values.filter((v) => !rest.includes(v)).map((v) => value(v, option));
  return [
    word('or', snapshot.say.anotherValue, { insert: 'or ', goesOn: true }),
    word('and', snapshot.say.anotherOption, { insert: 'and ', goesOn: true }),
  ];
}

function optionsIn(snapshot: Snapshot): Map<string, string[]> {
  const job = snapshot.job();
  const options = new Map<string, string[]>();
  const applied = new Set(job.file.applies.map((l) => l.vehicle?.text));
  for (const vehicle of job.scope.names.values()) {
    if (vehicle.kind !== 'vehicle' || (applied.size > 0 && !applied.has(vehicle.name))) continue;
    for (const { clause } of vehicle.clauses.get('option') ?? []) {
      const [name, ...values] = clause.words.map((w) => w.text);
      if (name !== undefined) options.set(name, [...new Set([...(options.get(name) ?? []), ...values])]);
    }
  }
  if (job.file.sides.length > 0) options.set('side', [...job.file.sides]);
  options.set('year', yearsOf(snapshot, applied));
  return options;
}

/** The model years of the vehicles, as their entries write them. */
export function yearsOf(snapshot: Snapshot, applied: ReadonlySet<string | undefined>): string[] {
  const vehicles = [...snapshot.job().scope.names.values()].filter(
    (t) => t.kind === 'vehicle' && (applied.size === 0 || applied.has(t.name)),
  );
  return vehicles.flatMap((vehicle) =>
    (vehicle.clauses.get('years') ?? []).flatMap(({ clause }) => {
      const measure = clause.spec?.stages[0]?.measure;
      return measure ? (snapshot.file(vehicle.file)?.text.slice(measure.start, measure.end) ?? []) : [];
    }),
  );
}
