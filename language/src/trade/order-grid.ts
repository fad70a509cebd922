/** Orders over rows and columns or measured places: from the middle outward, crossing the middle each time. */
/** A place, x to the right and y down. Diagrams use the unit square. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * Places of `count` fasteners in rows, one unit apart, row by row from the top left. Where the count does not
 * divide, the upper rows hold one more and every row is middled (eleven in two rows: six over five).
 */
export function gridPositions(
  count: number,
  layout: { readonly rows: number; readonly columns?: number | undefined },
): Point[] {
  const { rows } = layout;
  const least = Math.floor(count / rows);
  const longer = count - least * rows;
  return Array.from({ length: rows }, (_, row) => {
    const length = layout.columns ?? least + (row < longer ? 1 : 0);
    return Array.from({ length }, (_, column) => ({ x: column - (length - 1) / 2, y: row - (rows - 1) / 2 }));
  }).flat();
}

/**
 * Position numbers from the middle outward. Each is followed at once by the one mirrored through the middle, where
 * there is one, so distance never falls and consecutive fasteners lie on opposite sides; among equals the one
 * farthest from the last comes next. Common practice for heads, covers and pans.
 */
export function nearestFirst(places: readonly Point[]): number[] {
  const middle = {
    x: (Math.min(...places.map((p) => p.x)) + Math.max(...places.map((p) => p.x))) / 2,
    y: (Math.min(...places.map((p) => p.y)) + Math.max(...places.map((p) => p.y))) / 2,
  };
  const left = new Map(places.map((p, i) => [i + 1, p] as const));
  const order: number[] = [];
  let last: Point | undefined;
  const take = (position: number, place: Point) => {
    order.push(position);
    left.delete(position);
    last = place;
  };
  while (left.size > 0) {
    const next = best(left, middle, last);
    if (!next) break;
    take(...next);
    const [, place] = next;
    const mirror = [...left].find(([, p]) =>
      near(p, { x: 2 * middle.x - place.x, y: 2 * middle.y - place.y }),
    );
    if (mirror) take(...mirror);
  }
  return order;
}

function best(
  left: ReadonlyMap<number, Point>,
  middle: Point,
  last: Point | undefined,
): [number, Point] | undefined {
  let found: [number, Point] | undefined;
  for (const [position, place] of left) {
    if (!found) {
      found = [position, place];
      continue;
    }
    const nearer = distance(found[1], middle) - distance(place, middle);
    const farther = last ? distance(place, last) - distance(found[1], last) : 0;
    if (nearer > 1e-9 || (nearer > -1e-9 && farther > 1e-9)) found = [position, place];
  }
  return found;
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function near(a: Point, b: Point): boolean {
  return distance(a, b) < 1e-9;
}
