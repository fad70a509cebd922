// The first lines of a procedure, for each vehicle of the library: with the catalogue that declares it and the files
// that procedures for it use as a rule.
import { resolvePath, type Thing } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import { CATALOGUE, relative } from '../import-lines.js';
import { PROCEDURE } from '../numbered.js';
import type { Offer } from './answer.js';
import { snippet, stop } from './snippet-text.js';

/** One for each vehicle while they are few; one with places to fill where there are none, or too many for a list. */
export function procedureOffers(snapshot: Snapshot): Offer[] {
  const { say } = snapshot;
  const vehicles = vehiclesOf(snapshot);
  if (vehicles.length === 0 || vehicles.length > MOST)
    return [snippet('procedure …', say.procedureSnippet, textFor(stop(3, 'vehicle'), []))];
  const users = proceduresOf(snapshot);
  return vehicles.map((vehicle) => ({
    ...snippet(
      vehicles.length === 1 ? 'procedure …' : `procedure … ${vehicle.name}`,
      say.procedureSnippet,
      textFor(vehicle.name, usesFor(snapshot, vehicle, users)),
    ),
    detail: vehicle.title,
  }));
}

/** More are no list to choose from. */
const MOST = 8;

function vehiclesOf({ shelf, library, file }: Snapshot): Thing[] {
  return shelf.paths().flatMap((path) => {
    const text = file(path)?.text ?? '';
    if (!CATALOGUE.test(text) || !/^vehicles\s*$/m.test(text)) return [];
    return library.model(path)?.things.filter(({ kind }) => kind === 'vehicle') ?? [];
  });
}

interface Procedure {
  readonly vehicles: readonly string[];
  /** Library paths of the files it uses. */
  readonly uses: readonly string[];
}

/** Told by their lines alone, so that a list does not read a whole library. */
function proceduresOf({ shelf, file, path: own }: Snapshot): Procedure[] {
  return shelf.paths().flatMap((path) => {
    const text = path === own ? '' : (file(path)?.text ?? '');
    if (!PROCEDURE.test(text)) return [];
    const vehicles = [...text.matchAll(/^applies to[ \t]+(\S+)/gm)].map(([, name = '']) => name);
    const uses = [...text.matchAll(/^use[ \t]+"([^"\r\n]+)"/gm)].flatMap(
      ([, written = '']) => resolvePath(path, written) ?? [],
    );
    return [{ vehicles, uses }];
  });
}

/** The catalogue of the vehicle, and what more than half of its procedures use. */
function usesFor({ path }: Snapshot, vehicle: Thing, procedures: readonly Procedure[]): string[] {
  const own = procedures.filter(({ vehicles }) => vehicles.includes(vehicle.name));
  const counts = new Map<string, number>();
  for (const { uses } of own) for (const use of new Set(uses)) counts.set(use, (counts.get(use) ?? 0) + 1);
  const usual = [...counts].filter(([use, count]) => use !== vehicle.file && count * 2 > own.length);
  return [vehicle.file, ...usual.map(([use]) => use).sort()].map((use) => relative(path, use));
}

function textFor(vehicle: string, uses: readonly string[]): string {
  const imports = uses.map((use) => `use "${use}"\n`).join('');
  return `procedure ${stop(1, '?')}: ${stop(2, 'Title')}

${imports === '' ? '' : `${imports}\n`}applies to ${vehicle}
labour ${stop(4, '1 h')}
status draft

parts
  ${stop(5, 'part')}: ${stop(6, 'Title')}
    held by ${stop(7, 'bolt')}

fasteners
  ${stop(7, 'bolt')}: ${stop(8, 'Title')}
    ${stop(9, '4')} of ${stop(10, 'M8x1.25')}, hex ${stop(11, '13 mm')}
    torque ${stop(12, '?')}

removal
  step: ${stop(13, 'Take it off')}
    remove ${stop(7, 'bolt')}, ${stop(5, 'part')}
    $0
`;
}
