import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countKits, limitKits, reachPrints } from '#core/kits/most-kits.ts';
import { kitStocks } from '../../support/kit-stocks.ts';

const print = (squares: number, most = 99) => ({ squares, most });
const stock = (
  prints: readonly { squares: number; most: number }[],
  perKit: number,
  distinct = 1,
) => ({
  prints,
  others: [],
  perKit,
  distinct,
});

describe('reachPrints', () => {
  test('reachPrints counts no more of a print than the kits may hold', () => {
    expect(reachPrints([print(9, 2), print(3, 2), print(7, 0)], 4)).toEqual({
      squares: 11,
      prints: 7,
    });
  });
});

describe('countKits', () => {
  test('countKits of one print without rules is the squares by the kit', () => {
    expect(countKits(stock([print(47)], 10))).toBe(4);
    expect(countKits(stock([print(9)], 10))).toBe(0);
  });

  test('countKits: a full bolt beside two short ends makes no more than the rule on one print lets', () => {
    // 100 squares of one print, 6 and 6 of two others, kits of 10 with at most 6 of one: four others
    // a kit, so 12 / 4 = 3.
    expect(countKits(stock([print(100, 6), print(6, 6), print(6, 6)], 10))).toBe(3);
  });

  test('countKits: each kit shows as many prints as it must', () => {
    // Three prints in each kit, 40, 40 and 5 of them: the scarce one makes 5.
    expect(countKits(stock([print(40), print(40), print(5)], 10, 3))).toBe(5);
    expect(countKits(stock([print(40), print(40), print(5)], 10, 2))).toBe(8);
    expect(countKits(stock([print(40)], 10, 2))).toBe(0);
    expect(countKits(stock([print(40), print(40)], 1, 2))).toBe(0);
  });

  test('countKits: middle and backing limit too', () => {
    const others = [{ role: 'backing' as const, squares: 25, perKit: 10 }];
    expect(countKits({ ...stock([print(100)], 10), others })).toBe(2);
  });

  test('countKits: more of anything never makes fewer, and a stricter rule never more', () => {
    fc.assert(
      fc.property(kitStocks, fc.nat(), fc.integer({ min: 1, max: 9 }), (own, which, more) => {
        const most = countKits(own);
        const at = which % own.prints.length;
        const prints = own.prints.map((one, index) =>
          index === at ? { ...one, squares: one.squares + more } : one,
        );
        expect(countKits({ ...own, prints })).toBeGreaterThanOrEqual(most);
        expect(
          countKits({ ...own, prints: [...own.prints, print(more, 3)] }),
        ).toBeGreaterThanOrEqual(most);
        expect(countKits({ ...own, distinct: own.distinct + 1 })).toBeLessThanOrEqual(most);
        const stricter = own.prints.map((one) => ({ ...one, most: Math.max(0, one.most - 1) }));
        expect(countKits({ ...own, prints: stricter })).toBeLessThanOrEqual(most);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('limitKits', () => {
  test('limitKits names what is short', () => {
    const others = [{ role: 'backing' as const, squares: 25, perKit: 10 }];
    const own = { ...stock([print(100, 6), print(6, 6), print(6, 6)], 10, 3), others };
    expect(limitKits(own, 2)).toEqual([]);
    expect(limitKits(own, 3)).toEqual(['backing']);
    expect(limitKits(own, 7)).toEqual(['mostOfOne', 'distinctPrints', 'backing']);
    expect(limitKits(own, 12)).toEqual(['top', 'distinctPrints', 'backing']);
  });

  test('limitKits has nothing to say of the most and something of one more', () => {
    fc.assert(
      fc.property(kitStocks, (own) => {
        const most = countKits(own);
        if (most > 0) expect(limitKits(own, most)).toEqual([]);
        expect(limitKits(own, most + 1)).not.toEqual([]);
      }),
    );
  });
});
