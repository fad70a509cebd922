// Decision diagrams over variables with a few values each: the set of combinations on which something holds.
// Nodes are hash-consed, so equal sets are equal numbers and what does not depend on a variable costs nothing.

/** A set of combinations: 0 is none, 1 is all, larger numbers are nodes of their `Diagrams`. */
export type Condition = number;

/** No combination, and all of them. */
export const NEVER: Condition = 0;
export const ALWAYS: Condition = 1;

/** A variable: its number is its place in the order. */
export interface Variable {
  readonly index: number;
  readonly arity: number;
}

/** One choice of a combination: variable number to value number. */
export type Choice = ReadonlyMap<number, number>;

const TERMINAL = Number.MAX_SAFE_INTEGER;

/** Holds the nodes of one analysis; conditions of two holders must not be mixed. */
export class Diagrams {
  readonly #variableOf: number[] = [TERMINAL, TERMINAL];
  readonly #children: (readonly Condition[])[] = [[], []];
  readonly #unique = new Map<string, Condition>();
  readonly #and = new Map<number, Condition>();
  readonly #not = new Map<Condition, Condition>();
  readonly #arities: number[] = [];

  /** Adds a variable behind all others. */
  variable(arity: number): Variable {
    this.#arities.push(arity);
    return { index: this.#arities.length - 1, arity };
  }

  /** Holds where the variable has one of the values. */
  where(variable: Variable, values: readonly number[]): Condition {
    return this.#node(
      variable.index,
      Array.from({ length: variable.arity }, (_, i) => (values.includes(i) ? ALWAYS : NEVER)),
    );
  }

  not(a: Condition): Condition {
    if (a <= 1) return 1 - a;
    const known = this.#not.get(a);
    if (known !== undefined) return known;
    const result = this.#node(
      this.#at(a),
      this.#kids(a).map((child) => this.not(child)),
    );
    this.#not.set(a, result);
    this.#not.set(result, a);
    return result;
  }

  and(a: Condition, b: Condition): Condition {
    if (a === b) return a;
    if (a === NEVER || b === NEVER) return NEVER;
    if (a === ALWAYS) return b;
    if (b === ALWAYS) return a;
    // One number for the pair: 26 bits for each node are more than fit into memory, and exact in a double.
    const key = a < b ? a * 0x4000000 + b : b * 0x4000000 + a;
    const known = this.#and.get(key);
    if (known !== undefined) return known;
    const va = this.#at(a);
    const vb = this.#at(b);
    const v = Math.min(va, vb);
    const kids: Condition[] = [];
    const ka = this.#kids(a);
    const kb = this.#kids(b);
    for (let i = 0; i < (this.#arities[v] ?? 0); i++) {
      kids.push(this.and(va === v ? (ka[i] ?? NEVER) : a, vb === v ? (kb[i] ?? NEVER) : b));
    }
    const result = this.#node(v, kids);
    this.#and.set(key, result);
    return result;
  }

  or(a: Condition, b: Condition): Condition {
    if (a === b || b === NEVER) return a;
    if (a === NEVER) return b;
    if (a === ALWAYS || b === ALWAYS) return ALWAYS;
    return this.not(this.and(this.not(a), this.not(b)));
  }

  minus(a: Condition, b: Condition): Condition {
    return this.and(a, this.not(b));
  }

  implies(a: Condition, b: Condition): boolean {
    return this.minus(a, b) === NEVER;
  }

  /** The condition with the variable fixed to a value. */
  fix(a: Condition, variable: number, value: number): Condition {
    if (a <= 1) return a;
    const v = this.#at(a);
    if (v > variable) return a;
    const kids = this.#kids(a);
    if (v === variable) return kids[value] ?? NEVER;
    return this.#node(
      v,
      kids.map((child) => this.fix(child, variable, value)),
    );
  }

  /** Holds where some value of the variable makes the condition hold: the variable is forgotten. */
  forget(a: Condition, variable: number): Condition {
    let result: Condition = NEVER;
    for (let i = 0; i < (this.#arities[variable] ?? 0); i++)
      result = this.or(result, this.fix(a, variable, i));
    return result;
  }

  /** Whether the condition asks about the variable. */
  mentions(a: Condition, variable: number): boolean {
    return this.support(a).has(variable);
  }

  /** The variables the condition depends on. */
  support(a: Condition): ReadonlySet<number> {
    const found = new Set<number>();
    const seen = new Set<Condition>();
    const visit = (n: Condition): void => {
      if (n <= 1 || seen.has(n)) return;
      seen.add(n);
      found.add(this.#at(n));
      for (const child of this.#kids(n)) visit(child);
    };
    visit(a);
    return found;
  }

  /** Some combination on which the condition holds, or undefined when there is none. Unnamed variables are free. */
  some(a: Condition): Choice | undefined {
    if (a === NEVER) return undefined;
    const choice = new Map<number, number>();
    let n = a;
    while (n > 1) {
      const kids = this.#kids(n);
      const i = kids.findIndex((child) => child !== NEVER);
      choice.set(this.#at(n), i);
      n = kids[i] ?? NEVER;
    }
    return choice;
  }

  /** Whether the condition holds on a combination; unnamed variables count as their first value. */
  holds(a: Condition, choice: Choice): boolean {
    let n = a;
    while (n > 1) n = this.#kids(n)[choice.get(this.#at(n)) ?? 0] ?? NEVER;
    return n === ALWAYS;
  }

  /** Number of nodes, for measurements. */
  get size(): number {
    return this.#variableOf.length;
  }

  arity(variable: number): number {
    return this.#arities[variable] ?? 0;
  }

  #at(n: Condition): number {
    return this.#variableOf[n] ?? TERMINAL;
  }

  #kids(n: Condition): readonly Condition[] {
    return this.#children[n] ?? [];
  }

  #node(variable: number, kids: readonly Condition[]): Condition {
    const first = kids[0] ?? NEVER;
    if (kids.every((child) => child === first)) return first;
    const key = `${variable}:${kids.join(',')}`;
    const known = this.#unique.get(key);
    if (known !== undefined) return known;
    const id = this.#variableOf.length;
    this.#variableOf.push(variable);
    this.#children.push(kids);
    this.#unique.set(key, id);
    return id;
  }
}
