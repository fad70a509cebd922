// Sorts the library into the tree that the view shows. No editor in here, so that it can be tested on its own.
import type {
  FindingCounts,
  Library,
  LibraryProcedure,
  LibrarySpec,
  Location,
} from '@baywright/server/protocol';

export interface LibraryNode {
  readonly kind: 'vehicle' | 'procedure' | 'out of date' | 'figures' | 'figure' | 'use';
  readonly label: string;
  readonly detail: string;
  readonly tooltip?: string;
  readonly findings?: FindingCounts;
  readonly location?: Location;
  readonly children?: readonly LibraryNode[];
  /** True when it is shown unfolded at first. */
  readonly open?: boolean;
}

export interface LibraryWords {
  readonly outOfDate: string;
  readonly figures: string;
  readonly anyVehicle: string;
}

/** Vehicles by title with their procedures by number, then guides out of date, then figures; empty groups are left away. */
export function libraryTree(library: Library, words: LibraryWords): LibraryNode[] {
  const stale = byNumber(library.procedures.filter((procedure) => procedure.outOfDate !== undefined));
  const groups: LibraryNode[] = [
    ...vehicles(library.procedures, words.anyVehicle),
    {
      kind: 'out of date',
      label: words.outOfDate,
      detail: '',
      open: true,
      children: stale.map((procedure) => ({
        ...procedureNode(procedure),
        detail: procedure.outOfDate ?? '',
      })),
    },
    {
      kind: 'figures',
      label: words.figures,
      detail: '',
      children: [...library.specs].sort((a, b) => order(a.title, b.title)).map(figureNode),
    },
  ];
  return groups.filter((group) => group.children?.length !== 0);
}

function vehicles(procedures: readonly LibraryProcedure[], anyVehicle: string): LibraryNode[] {
  const byVehicle = new Map<string, LibraryProcedure[]>();
  for (const procedure of procedures) {
    const titles =
      procedure.vehicles.length > 0 ? procedure.vehicles.map((vehicle) => vehicle.title) : [anyVehicle];
    for (const title of titles) byVehicle.set(title, [...(byVehicle.get(title) ?? []), procedure]);
  }
  return [...byVehicle]
    .sort(([a], [b]) => order(a, b))
    .map(([title, own]) => ({
      kind: 'vehicle',
      label: title,
      detail: '',
      open: true,
      children: byNumber(own).map(procedureNode),
    }));
}

function procedureNode({ uri, number, title, status, revision, findings }: LibraryProcedure): LibraryNode {
  const location = { uri, range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } } };
  const detail = revision === undefined ? status : `${status}, rev. ${revision}`;
  return { kind: 'procedure', label: `${number}  ${title}`, detail, findings, location };
}

function figureNode({ title, figure, source, location, uses }: LibrarySpec): LibraryNode {
  const children = uses.map(
    (use): LibraryNode => ({ kind: 'use', label: use.label, detail: '', location: use.location }),
  );
  return {
    kind: 'figure',
    label: title,
    detail: `${figure} · ${uses.length} ×`,
    ...(source !== undefined && { tooltip: source }),
    location,
    children,
  };
}

function byNumber(procedures: readonly LibraryProcedure[]): LibraryProcedure[] {
  return [...procedures].sort((a, b) => order(a.number, b.number));
}

/** `FH-2` before `FH-12`. */
function order(a: string, b: string): number {
  return a.localeCompare(b, undefined, { numeric: true });
}
