// The editor's settings for the server (section `baywright`): read by pull or push, live, every one with a default.

export interface Options {
  /** Which files show findings. */
  readonly scope: 'open files' | 'whole library';
  readonly inlay: {
    /** The master switch of all inlay hints. */
    readonly enabled: boolean;
    /** The other unit system behind a quantity. */
    readonly secondUnits: boolean;
    /** Clamp force and share of proof load behind a torque. */
    readonly jointFigures: boolean;
    /** Count and head of a fastener behind its name in a step. */
    readonly fasteners: boolean;
    /** `new` behind parts that are renewed. */
    readonly renewed: boolean;
  };
  readonly lens: boolean;
  /** Address of the reference that codes lead to; empty where there is none. */
  readonly reference: string;
  /** Findings that are left out in some files: a glob over library paths, and codes. */
  readonly suppress: readonly { readonly files: string; readonly codes: readonly string[] }[];
}

/** Hints are quiet: the second unit alone, until the user asks for more. */
export const DEFAULT_OPTIONS: Options = {
  scope: 'whole library',
  inlay: { enabled: true, secondUnits: true, jointFigures: false, fasteners: false, renewed: false },
  lens: true,
  reference: '',
  suppress: [],
};

/** Reads what a client sends, whatever its shape; values of another type count as not given. `reference` is the usual one. */
export function readOptions(sent: unknown, reference: string): Options {
  const section = at(sent, ['baywright']) ?? sent;
  const flag = (name: string, usual: boolean): boolean => {
    const value = at(section, name.split('.'));
    return typeof value === 'boolean' ? value : usual;
  };
  const usual = DEFAULT_OPTIONS;
  const suppress = at(section, ['findings', 'suppress']);
  return {
    scope: at(section, ['findings', 'scope']) === 'open files' ? 'open files' : 'whole library',
    inlay: {
      enabled: flag('inlay.enabled', usual.inlay.enabled),
      secondUnits: flag('inlay.secondUnits', usual.inlay.secondUnits),
      jointFigures: flag('inlay.jointFigures', usual.inlay.jointFigures),
      fasteners: flag('inlay.fasteners', usual.inlay.fasteners),
      renewed: flag('inlay.renewed', usual.inlay.renewed),
    },
    lens: flag('lens.enabled', usual.lens),
    reference: addressIn(at(section, ['reference', 'address'])) ?? reference,
    suppress: Array.isArray(suppress) ? suppress.flatMap(readSuppression) : [],
  };
}

/** An address that a link may lead to; anything else counts as not given. */
function addressIn(value: unknown): string | undefined {
  return typeof value === 'string' && /^(?:https?|file):\/\/\S+$/.test(value) ? value : undefined;
}

function readSuppression(entry: unknown): Options['suppress'][number][] {
  const files = at(entry, ['files']);
  const codes = at(entry, ['codes']);
  if (typeof files !== 'string' || !Array.isArray(codes)) return [];
  return [{ files, codes: codes.filter((c): c is string => typeof c === 'string') }];
}

/** A nested value; a dotted name as one key counts too, as some clients send it. */
function at(value: unknown, path: readonly string[]): unknown {
  if (typeof value !== 'object' || value === null) return undefined;
  const record = value as Readonly<Record<string, unknown>>;
  const dotted = record[path.join('.')];
  if (dotted !== undefined) return dotted;
  const [first = '', ...rest] = path;
  const inner = record[first];
  return rest.length === 0 ? inner : at(inner, rest);
}
