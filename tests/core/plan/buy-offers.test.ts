import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ClothOffer, PlanLayer } from '#core/contract.ts';
import { buyOffers } from '#core/plan/buy-offers.ts';
import { explainedFor, planFor } from '../../support/plans.ts';

const BOLT = { kind: 'roll', id: 'bolt', price: 1200 } as const;
const QUARTER = {
  kind: 'pieces',
  id: 'quarter',
  width: 21,
  length: 18,
  count: 1,
  price: 300,
} as const;
const SQUARES = {
  kind: 'pieces',
  id: 'squares',
  width: 10,
  length: 10,
  count: 42,
  price: 4900,
} as const;

/** 6 by 8 blocks of 8 1/2 in, two prints: 24 and 2 spare of each. */
function rowsOf(top: Partial<PlanLayer>) {
  const layers = [{ role: 'top', prints: 2, ...top }, { role: 'backing' }] as const;
  return planFor({ target: { columns: 6, rows: 8 }, layers }).fabrics;
}

/** Of an eighth of a yard, a fat quarter and a pack of squares. */
interface Prices {
  readonly eighth: number;
  readonly quarter: number;
  readonly squares: number;
}

/** The cheapest of every purchase of two packs and eighths of a yard off one roll, one after the other. */
function tryAll({ eighth, quarter, squares }: Prices, wanted: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let quarters = 0; quarters <= wanted; quarters += 1) {
    for (let packs = 0; packs <= 1; packs += 1) {
      // A fat quarter gives 2 by 2 blocks, a strip of 41 in 4; an inch squares the roll up.
      const rest = Math.max(0, wanted - 4 * quarters - 42 * packs);
      const steps = rest === 0 ? 0 : Math.ceil((Math.ceil(rest / 4) * 8.5 + 1) / 4.5);
      least = Math.min(least, quarters * quarter + packs * squares + steps * eighth);
    }
  }
  return least;
}

describe('buyOffers', () => {
  test('buyOffers buys each print by itself and lets the other layers come off the roll', () => {
    const rows = rowsOf({ offers: [QUARTER] });
    expect(rows.map(({ print, purchase }) => [print, purchase?.map(({ text }) => text)])).toEqual([
      ['A', ['7 pieces of 21 in by 18 in']],
      ['B', ['7 pieces of 21 in by 18 in']],
      [undefined, undefined],
    ]);
    expect(rows[0]).toMatchObject({
      spareFree: 2,
      cost: { of: 'price', total: 2100, bound: 2100 },
      buy: { text: '1 3/4 yd' },
    });
    expect(rows[0]?.waste).toBeCloseTo(100 * (1 - (26 * 72.25) / (7 * 378)), 4);
  });

  test('buyOffers finds the cheapest of all purchases, whatever the prices', () => {
    const price = (most: number) => fc.integer({ min: 1, max: most });
    const prices = fc.record({ eighth: price(400), quarter: price(1600), squares: price(16_000) });
    fc.assert(
      fc.property(prices, ({ eighth, quarter, squares }) => {
        const offers = [
          { ...BOLT, price: 8 * eighth },
          { ...QUARTER, price: quarter },
          { ...SQUARES, price: squares },
        ];
        const total = tryAll({ eighth, quarter, squares }, 26);
        expect(rowsOf({ offers })[0]?.cost).toEqual({ of: 'price', total, bound: total });
      }),
      { numRuns: 60 },
    );
  });

  test('buyOffers without prices takes least cloth', () => {
    const { price: _, ...quarter } = QUARTER;
    const { price: __, ...bolt } = BOLT;
    const [row] = rowsOf({ offers: [{ ...quarter, width: 20 }, bolt] });
    // Seven of 20 by 18 in are 2520 square inches; any with a length off the roll are more, 1 3/4 yd alone 2646.
    expect(row?.cost?.of).toBe('area');
    expect(row?.purchase).toMatchObject([{ offer: 'quarter', count: 7 }]);
    expect(row?.cost?.total).toBeCloseTo(2520 / 1296, 4);
    expect(row?.cost?.bound).toBe(row?.cost?.total);
  });

  test('buyOffers gives what the purchase holds and no more: pieces, spare and free ones', () => {
    const offers: fc.Arbitrary<readonly ClothOffer[]> = fc.constantFrom(
      [QUARTER],
      [SQUARES],
      [BOLT],
      [BOLT, QUARTER],
      [QUARTER, { ...SQUARES, price: 1000 }],
      [{ ...QUARTER, count: 5, price: 900 }, BOLT],
    );
    fc.assert(
      fc.property(offers, fc.integer({ min: 1, max: 9 }), (sold, rows) => {
        const layers = [{ role: 'top', prints: 1, offers: sold }, { role: 'backing' }] as const;
        const [row] = planFor({ target: { columns: 5, rows }, layers }).fabrics;
        if (row?.purchase === undefined) throw new Error('Nothing bought');
        const held = row.purchase.reduce((sum, line) => {
          if ('amount' in line) return sum + 4 * Math.floor((line.amount * 36 - 1) / 8.5 + 1e-9);
          const each = sold.find(({ id }) => id === line.offer);
          if (each?.kind !== 'pieces') throw new Error('No such pack');
          return sum + line.count * each.count * (each.id === 'quarter' ? 4 : 1);
        }, 0);
        expect(row.pieces + row.spare + row.spareFree).toBe(held);
        expect(row).not.toHaveProperty('lacking');
        const left = row.left.reduce(
          (sum, { width, length, count }) =>
            sum + count * Math.floor(width / 8.5) * Math.floor(length / 8.5),
          0,
        );
        expect(left).toBe(row.spareFree);
      }),
    );
  });

  test('buyOffers leaves sheets cut in part and sheets not cut', () => {
    const pack = { ...QUARTER, count: 10 };
    const [row] = rowsOf({ offers: [pack] });
    expect(row?.purchase).toMatchObject([
      { count: 1, text: '1 pack of 10 pieces of 21 in by 18 in' },
    ]);
    // 26 squares: six sheets of four, one of two, three whole.
    expect(row?.left).toEqual([
      { width: 4, length: 17, count: 6 },
      { width: 21, length: 9.5, count: 1 },
      { width: 4, length: 8.5, count: 1 },
      { width: 21, length: 18, count: 3 },
    ]);
    expect(row?.spareFree).toBe(14);
  });

  test('buyOffers tells how many pieces all there is does not give', () => {
    const [row] = rowsOf({ offers: [{ ...QUARTER, most: 5 }] });
    expect(row).toMatchObject({ lacking: 6, spareFree: 0, purchase: [{ count: 5 }] });
    expect(row?.waste).toBeCloseTo(100 * (1 - (20 * 72.25) / (5 * 378)), 4);
  });

  test('buyOffers counts a prewash into flat pieces', () => {
    const washed = { prewashed: true, shrink: { length: 10, width: 10 } } as const;
    const [row] = rowsOf({ ...washed, offers: [QUARTER] });
    // 18.9 by 16.2 in: two blocks.
    expect(row?.purchase).toMatchObject([{ count: 13 }]);
  });

  test('buyOffers buys nothing for a print without a block', () => {
    const prints = [{ id: 'a' }, { id: 'b', share: 0 }];
    const rows = rowsOf({ prints, offers: [QUARTER] });
    expect(rows[1]).toMatchObject({
      purchase: [],
      cost: { of: 'price', total: 0, bound: 0 },
      spareFree: 0,
      left: [],
      waste: 0,
    });
  });

  test('buyOffers leaves the options and what is chosen as they are without offers', () => {
    const layers = [{ role: 'top', offers: [QUARTER] }, { role: 'backing' }] as const;
    const request = { target: { width: 40, height: 50 }, cuts: [7, 8, 9] };
    expect(planFor({ ...request, layers }).options).toEqual(planFor(request).options);
    const { spec, plan } = explainedFor(request);
    expect(buyOffers(spec, plan)).toEqual(spec.cloths.map(() => undefined));
  });
});
