// Tightening orders: the orders the trade knows, the laws every order keeps, and how they are said and drawn.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  isOrder,
  type OrderInput,
  orderNumbers,
  orderSentence,
  orderSvg,
  orderText,
  readOrder,
  reverseOrder,
  type TighteningOrder,
  tighteningOrder,
} from '../../language/src/trade/index.js';

const order = (input: OrderInput): TighteningOrder => {
  const found = tighteningOrder(input);
  if (!isOrder(found)) throw new Error(found.problem);
  return found;
};
const at = (o: TighteningOrder, position: number) =>
  o.positions[position - 1] ?? { x: Number.NaN, y: Number.NaN };

describe('orders the trade knows', () => {
  it.each([
    [3, '1-2-3', 'round, nothing to cross'],
    [4, '1-3-2-4', 'common practice: across, then across'],
    [5, '1-3-5-2-4', 'a public workshop handbook; one of two possible stars'],
    [6, '1-4-2-5-3-6', 'common practice'],
    [7, '1-4-7-3-6-2-5', 'computed: step 3'],
    [8, '1-5-3-7-2-6-4-8', 'from memory'],
    [10, '1-6-3-8-5-10-2-7-4-9', 'from memory'],
  ])('star of %d is %s (%s)', (count, numbers) => {
    expect(orderNumbers(order({ pattern: 'star', count }))).toBe(numbers);
  });

  it.each([
    [4, '1-3, 2-4', 'ASME PCC-1 legacy, from memory'],
    [8, '1-5, 3-7, 2-6, 4-8', 'ASME PCC-1 legacy, from memory'],
    [12, '1-7, 4-10, 2-8, 5-11, 3-9, 6-12', 'ASME PCC-1 legacy, wjlr.roverradio.com'],
    [16, '1-9, 5-13, 3-11, 7-15, 2-10, 6-14, 4-12, 8-16', 'ASME PCC-1 legacy, from memory'],
    [20, '1-11, 6-16, 3-13, 8-18, 5-15, 10-20, 2-12, 7-17, 4-14, 9-19', 'ASME PCC-1 legacy, from memory'],
    [
      24,
      '1-13, 7-19, 4-16, 10-22, 2-14, 8-20, 5-17, 11-23, 3-15, 9-21, 6-18, 12-24',
      'ASME PCC-1 legacy, from memory',
    ],
  ])('cross of %d is %s (%s)', (count, numbers) => {
    expect(orderNumbers(order({ pattern: 'cross', count }))).toBe(numbers);
  });

  it('cross of 48 goes by twelve groups of four neighbours (knm-hydraulikk.no on PCC-1-2019)', () => {
    const groups = order({ pattern: 'cross', count: 48 }).groups ?? [];
    expect(groups).toHaveLength(12);
    expect(groups[0]).toEqual([1, 2, 3, 4]);
    expect(groups[1]).toEqual([25, 26, 27, 28]);
  });

  it('a head of two rows of five starts in the middle and ends at the corners', () => {
    const found = order({ pattern: 'inside-out', count: 10, layout: { rows: 2, columns: 5 } });
    expect(found.order.slice(0, 2)).toEqual([3, 8]);
    expect([...found.order.slice(6)].sort((a, b) => a - b)).toEqual([1, 5, 6, 10]);
  });

  it('eleven cover bolts in two rows lie six over five', () => {
    const found = order({ pattern: 'inside-out', count: 11, layout: { rows: 2 } });
    expect(found.order[0]).toBe(9);
    expect(found.order.slice(-2).sort((a, b) => a - b)).toEqual([1, 6]);
  });
});

describe('laws', () => {
  const circle = fc.record({ pattern: fc.constant('star' as const), count: fc.integer({ min: 3, max: 24 }) });
  const flange = fc
    .integer({ min: 2, max: 60 })
    .map((half) => ({ pattern: 'cross' as const, count: half * 2 }));
  const grid = fc
    .record({ rows: fc.integer({ min: 1, max: 6 }), columns: fc.integer({ min: 1, max: 9 }) })
    .map((layout) => ({ pattern: 'inside-out' as const, count: layout.rows * layout.columns, layout }));
  const scattered = fc
    .uniqueArray(fc.record({ x: fc.integer({ min: 0, max: 40 }), y: fc.integer({ min: 0, max: 40 }) }), {
      minLength: 3,
      maxLength: 20,
      selector: (p) => `${p.x},${p.y}`,
    })
    .map((coordinates) => ({
      pattern: 'inside-out' as const,
      count: coordinates.length,
      layout: { coordinates },
    }));
  const any: fc.Arbitrary<OrderInput> = fc.oneof(circle, flange, grid, scattered);

  it('every order names each position once, and its reverse undoes it', () => {
    fc.assert(
      fc.property(any, (input) => {
        const found = order(input);
        expect([...found.order].sort((a, b) => a - b)).toEqual(
          Array.from({ length: input.count }, (_, i) => i + 1),
        );
        expect(reverseOrder(found).order).toEqual([...found.order].reverse());
        expect(reverseOrder(reverseOrder(found)).order).toEqual(found.order);
        for (const p of found.positions)
          expect(p.x >= -1e-9 && p.x <= 1 + 1e-9 && p.y >= -1e-9 && p.y <= 1 + 1e-9).toBe(true);
      }),
    );
  });

  it('each pair of a cross is diametrically opposite, and the second pair lies square to the first where four divide it', () => {
    fc.assert(
      fc.property(
        flange.filter((f) => f.count < 48),
        (input) => {
          const found = order(input);
          for (const pair of found.groups ?? [])
            expect(Math.abs((pair[0] ?? 0) - (pair[1] ?? 0))).toBe(input.count / 2);
          if (input.count % 4 === 0)
            expect(Math.abs((found.order[2] ?? 0) - (found.order[0] ?? 0))).toBe(input.count / 4);
        },
      ),
    );
  });

  it('a star never goes to a neighbour next, from five up', () => {
    fc.assert(
      fc.property(
        circle.filter((c) => c.count >= 5),
        (input) => {
          const { order: turns } = order(input);
          turns.slice(1).forEach((p, i) => {
            const apart = Math.abs(p - (turns[i] ?? 0));
            expect(Math.min(apart, input.count - apart)).toBeGreaterThan(1);
          });
        },
      ),
    );
  });

  it('inside-out never comes nearer the middle, and crosses it wherever the mirror place is filled', () => {
    fc.assert(
      fc.property(grid, (input) => {
        const found = order(input);
        const away = found.order.map((p) => Math.hypot(at(found, p).x - 0.5, at(found, p).y - 0.5));
        for (const [i, d] of away.slice(1).entries()) expect(d).toBeGreaterThanOrEqual((away[i] ?? 0) - 1e-9);
        const start = input.count % 2 === 1 && (away[0] ?? 1) < 1e-9 ? 1 : 0;
        for (let i = start; i + 1 < found.order.length; i += 2) {
          const [a, b] = [at(found, found.order[i] ?? 0), at(found, found.order[i + 1] ?? 0)];
          expect(a.x + b.x).toBeCloseTo(1, 9);
          expect(a.y + b.y).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  it('outside-in is inside-out backwards', () => {
    fc.assert(
      fc.property(grid, (input) => {
        expect(order({ ...input, pattern: 'outside-in' }).order).toEqual([...order(input).order].reverse());
      }),
    );
  });

  it('measured places on a circle give the star of the circle', () => {
    const coordinates = order({ pattern: 'star', count: 5 }).positions.map((p) => ({
      x: p.x * 70 + 12,
      y: p.y * 70 - 3,
    }));
    expect(order({ pattern: 'star', count: 5, layout: { coordinates } }).order).toEqual([1, 3, 5, 2, 4]);
  });
});

describe('orders that cannot be done', () => {
  it.each<[OrderInput, RegExp]>([
    [{ pattern: 'star', count: 2 }, /at least three/],
    [{ pattern: 'star', count: 26 }, /use cross/],
    [{ pattern: 'star', count: 25 }, /write the positions out/],
    [{ pattern: 'cross', count: 7 }, /even number/],
    [{ pattern: [1, 3, 5, 2], count: 5 }, /leaves out position 4/],
    [{ pattern: [1, 3, 5, 2, 2], count: 5 }, /comes twice/],
    [{ pattern: [1, 2, 3, 9], count: 4 }, /no position 9/],
    [{ pattern: 'inside-out', count: 11, layout: { rows: 2, columns: 5 } }, /hold 10 fasteners, not 11/],
    [{ pattern: 'inside-out', count: 3, layout: { rows: 5 } }, /cannot lie/],
    [{ pattern: 'star', count: 4, layout: { coordinates: [{ x: 0, y: 0 }] } }, /1 places are given/],
    [{ pattern: 'star', count: 0 }, /above zero/],
    [{ pattern: 'cross', count: 100000 }, /at most 200/],
  ])('%o', (input, message) => {
    const found = tighteningOrder(input);
    expect(isOrder(found) ? '' : found.problem).toMatch(message);
  });
});

describe('reading an order clause', () => {
  it('reads patterns, rows and positions', () => {
    expect(readOrder('star')).toEqual({ pattern: 'star' });
    expect(readOrder('inside-out, 2 rows')).toEqual({ pattern: 'inside-out', layout: { rows: 2 } });
    expect(readOrder('1-3-5-2-4')).toEqual({ pattern: [1, 3, 5, 2, 4] });
    expect(readOrder('round and round')).toHaveProperty('problem');
  });
});

describe('said and drawn', () => {
  it.each([
    ['en', 'Tighten in a star, counted clockwise from the top: 1-3-5-2-4. Make 2 passes: 50%, 100%.'],
    [
      'es',
      'Apretar en estrella, contando en sentido horario desde arriba: 1-3-5-2-4. Dar 2 pasadas: 50 %, 100 %.',
    ],
    [
      'fr',
      'Serrer en étoile, en comptant dans le sens horaire depuis le haut : 1-3-5-2-4. Faire 2 passes : 50 %, 100 %.',
    ],
    [
      'de',
      'Sternförmig anziehen, im Uhrzeigersinn von oben gezählt: 1-3-5-2-4. In 2 Durchgängen: 50 %, 100 %.',
    ],
  ] as const)('%s', (language, sentence) => {
    expect(orderSentence(order({ pattern: 'star', count: 5 }), language, { percentages: [50, 100] })).toBe(
      sentence,
    );
  });

  it('loosening is said and ordered backwards', () => {
    const found = reverseOrder(order({ pattern: 'inside-out', count: 4, layout: { rows: 2 } }));
    expect(orderSentence(found, 'en', { loosen: true })).toMatch(
      /^Loosen from the outside inward, counted row by row/,
    );
  });

  it('draws one head per fastener, the first black, numbered by turn where it lies', () => {
    const svg = orderSvg(order({ pattern: 'star', count: 5 }));
    expect(svg.match(/<polygon/g)).toHaveLength(5);
    expect(svg.match(/<polygon[^>]*fill="#000"/g)).toHaveLength(1);
    expect(svg).toMatch(/aria-label="Tighten in a star, counted clockwise from the top: 1-3-5-2-4\."/);
    const turns = [...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)"[^>]*>(\d+)</g)].map(
      (m) => [m[3], Number(m[1])] as const,
    );
    expect(turns.map(([turn]) => turn)).toEqual(['1', '2', '3', '4', '5']);
    expect(turns[1]?.[1]).toBeGreaterThan(50);
    expect(turns[2]?.[1]).toBeLessThan(50);
    expect(svg).not.toMatch(/https?:(?!\/\/www\.w3\.org\/2000\/svg)/);
  });

  it('keeps heads apart and figures at least 1.6 mm high on a 30 mm card, up to sixteen heads', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 16 }), (count) => {
        const svg = orderSvg(order({ pattern: 'star', count }), { widthMm: 30 });
        const heads = [...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)"[^>]*font-size="([\d.]+)"/g)].map(
          (m) => m.slice(1, 4).map(Number),
        );
        const size = heads[0]?.[2] ?? 0;
        expect((size * 30) / 100).toBeGreaterThanOrEqual(1.6);
        heads.forEach(([x = 0, y = 0], i) => {
          for (const [u = 0, v = 0] of heads.slice(i + 1))
            expect(Math.hypot(x - u, y - v)).toBeGreaterThan(size * 1.3);
        });
      }),
    );
  });

  it('prints the turns where the heads lie for a terminal', () => {
    expect(orderText(order({ pattern: 'inside-out', count: 10, layout: { rows: 2, columns: 5 } }))).toMatch(
      /^9 +3 +1 +6 +8\n7 +5 +2 +4 +10$/,
    );
  });
});
