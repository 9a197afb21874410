import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coverPieces } from '#core/cloth/offers/cover-pieces.ts';
import { listFillings } from '#core/cloth/offers/list-fillings.ts';
import type { CoverOrder } from '#core/cloth/offers/offer.ts';
import { pilePacks } from '#core/cloth/offers/pile-packs.ts';
import { ORDER_BY_HAND } from '../../../support/covers.ts';

const pile = (order: CoverOrder) =>
  pilePacks(
    order,
    order.sheets.map((sheet) => listFillings(order.kinds, sheet)),
    { steps: 1e6 },
  );

const side = fc.integer({ min: 4, max: 20 });
const orders: fc.Arbitrary<CoverOrder> = fc.record({
  kinds: fc.array(
    fc.record({
      across: side,
      along: side,
      count: fc.integer({ min: 1, max: 30 }),
      canTurn: fc.boolean(),
    }),
    { minLength: 1, maxLength: 5 },
  ),
  usable: fc.constantFrom(10, 44),
  rolls: fc.constantFrom([], [{ room: 9, squaring: 1, least: 1, cost: 40 }]),
  sheets: fc.array(
    fc.record({
      width: fc.integer({ min: 20, max: 44 }),
      length: fc.integer({ min: 20, max: 40 }),
      count: fc.integer({ min: 1, max: 4 }),
      cost: fc.integer({ min: 1, max: 500 }),
    }),
    { minLength: 1, maxLength: 3 },
  ),
});

describe('pilePacks', () => {
  test('pilePacks(three sizes by hand) is a purchase that is whole, and none is below the bound', () => {
    const { plan, cost, isWhole } = pile({ ...ORDER_BY_HAND, rolls: [] });
    expect(isWhole).toBe(true);
    expect(plan.placed).toEqual(ORDER_BY_HAND.kinds.map(({ count }) => count));
    expect(cost).toBeGreaterThanOrEqual(36);
  });

  test('pilePacks places every piece, and never for less than the cheapest purchase proven', () => {
    fc.assert(
      fc.property(orders, (order) => {
        const { plan, cost, isWhole } = pile(order);
        expect(isWhole).toBe(true);
        const onSheets = order.kinds.map((_, kind) =>
          [...plan.sheets, ...(plan.roll ? [{ times: 1, strips: plan.roll.strips }] : [])].reduce(
            (sum, { times, strips }) =>
              sum +
              times *
                strips.reduce(
                  (own, strip) =>
                    own +
                    strip.times * (strip.pieces.find((piece) => piece.kind === kind)?.count ?? 0),
                  0,
                ),
            0,
          ),
        );
        expect(onSheets).toEqual(order.kinds.map(({ count }) => count));
        const spent =
          plan.packs.reduce((sum, count, at) => sum + count * (order.sheets[at]?.cost ?? 0), 0) +
          (plan.roll?.steps ?? 0) * (order.rolls[plan.roll?.at ?? 0]?.cost ?? 0);
        expect(cost).toBe(spent);
        for (const [at, count] of plan.packs.entries()) {
          const used = plan.sheets.reduce((sum, own) => sum + (own.at === at ? own.times : 0), 0);
          expect(used).toBeLessThanOrEqual(count * (order.sheets[at]?.count ?? 0));
        }
        expect(coverPieces(order).bound).toBeLessThanOrEqual(cost + 1e-6);
      }),
      { numRuns: 60 },
    );
  });

  test('pilePacks buys no more packs than there are, and says that it is not whole', () => {
    const sheets = ORDER_BY_HAND.sheets.map((sheet) => ({ ...sheet, most: 1 }));
    const { plan, isWhole } = pile({ ...ORDER_BY_HAND, rolls: [], sheets });
    expect(isWhole).toBe(false);
    expect(plan.packs).toEqual([1]);
  });

  test('coverPieces falls back on it where no steps are left', () => {
    const plan = coverPieces({ ...ORDER_BY_HAND, rolls: [] }, { steps: 0 });
    expect(plan.placed).toEqual(ORDER_BY_HAND.kinds.map(({ count }) => count));
    expect(plan.optimal).toBe(false);
    expect(plan.bound).toBeLessThanOrEqual(36);
  });
});
