import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dealEvenly } from '#core/layout/deal-evenly.ts';

const totals = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 7 });
const hands = fc.integer({ min: 1, max: 12 });

describe('dealEvenly', () => {
  test('dealEvenly([3, 5], 4) gives everybody two', () => {
    expect(dealEvenly([3, 5], 4)).toEqual([
      { hands: 3, each: [1, 1] },
      { hands: 1, each: [0, 2] },
    ]);
  });

  test('dealEvenly is what dealing cards one by one gives', () => {
    fc.assert(
      fc.property(totals, hands, (all, count) => {
        const cards = all.flatMap((total, kind) => Array.from({ length: total }, () => kind));
        const dealt = Array.from({ length: count }, (_, hand) =>
          all.map((_, kind) => cards.filter((c, at) => c === kind && at % count === hand).length),
        );
        const deals = dealEvenly(all, count);
        expect(
          deals.flatMap((deal) => Array.from({ length: deal.hands }, () => deal.each)),
        ).toEqual(dealt);
        expect(deals.length).toBeLessThanOrEqual(all.length + 1);
      }),
    );
  });

  test('dealEvenly gives each hand the even share of every run of kinds, rounded down or up', () => {
    fc.assert(
      fc.property(totals, hands, fc.nat(6), fc.nat(6), (all, count, from, to) => {
        const run = (values: readonly number[]) =>
          values.slice(from, to + 1).reduce((sum, value) => sum + value, 0);
        for (const { each } of dealEvenly(all, count)) {
          expect(run(each)).toBeGreaterThanOrEqual(Math.floor(run(all) / count));
          expect(run(each)).toBeLessThanOrEqual(Math.ceil(run(all) / count));
        }
      }),
    );
  });
});
