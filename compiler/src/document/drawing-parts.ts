// How much a drawing draws: parts may use others, which use others again, so that a short file draws without end.

/** Counts while the tags of a drawing go by. */
export interface PartCount {
  open(id: string | undefined, uses: string | undefined): void;
  close(): void;
  /** What is wrong with the whole, to follow the name of the file; undefined where it is fine. */
  problem(): string | undefined;
}

/** More than this takes a browser and the typesetter minutes. A drawing traced from a photograph has some ten thousand. */
const MOST_PARTS = 200_000;
/** A part that uses a part that uses a part, so many times, is no drawing. */
const LONGEST_CHAIN = 500;

interface Part {
  readonly uses: string | undefined;
  readonly inside: Part[];
  total?: number;
}

export function partCount(): PartCount {
  const whole: Part = { uses: undefined, inside: [] };
  const named = new Map<string, Part>();
  const opened = [whole];
  const total = (part: Part, chain: number, above: ReadonlySet<Part>): number => {
    if (part.total !== undefined) return part.total;
    if (chain > LONGEST_CHAIN || above.has(part)) return Number.POSITIVE_INFINITY;
    const target = part.uses === undefined ? undefined : named.get(part.uses);
    const around = target ? new Set([...above, part]) : above;
    const parts = target ? [...part.inside, target] : part.inside;
    part.total = parts.reduce((sum, one) => sum + total(one, chain + 1, around), 1);
    return part.total;
  };
  return {
    open(id, uses) {
      const part: Part = { uses: uses?.startsWith('#') ? uses.slice(1) : undefined, inside: [] };
      opened.at(-1)?.inside.push(part);
      opened.push(part);
      if (id !== undefined) named.set(id, part);
    },
    close: () => void opened.pop(),
    problem() {
      const all = total(whole, 0, new Set());
      if (all === Number.POSITIVE_INFINITY) return 'has a part that uses itself; draw it simpler';
      return all > MOST_PARTS
        ? `draws more than ${MOST_PARTS / 1000} thousand parts; draw it simpler`
        : undefined;
    },
  };
}
