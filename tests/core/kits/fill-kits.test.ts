import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillKits } from '#core/kits/fill-kits.ts';
import { countKits } from '#core/kits/most-kits.ts';
import { kitStocks } from '../../support/kit-stocks.ts';

const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

describe('fillKits', () => {
  test('fillKits makes kits alike where the stock allows', () => {
    const prints = [60, 60, 60, 60].map((squares) => ({ squares, most: 12 }));
    expect(fillKits({ prints, others: [], perKit: 20, distinct: 4 }, 12)).toEqual([
      { count: 12, squares: [5, 5, 5, 5] },
    ]);
  });

  test('fillKits deals a scarce print to as many kits as it can', () => {
    const prints = [30, 30, 5].map((squares) => ({ squares, most: 10 }));
    const groups = fillKits({ prints, others: [], perKit: 8, distinct: 2 }, 8);
    const withScarce = groups.filter(({ squares }) => squares[2] === 1);
    expect(total(withScarce.map(({ count }) => count))).toBe(5);
    expect(groups.every(({ squares }) => (squares[2] ?? 0) <= 1)).toBe(true);
  });

  test('fillKits of none is none', () => {
    expect(fillKits({ prints: [], others: [], perKit: 8, distinct: 2 }, 0)).toEqual([]);
  });

  test('fillKits keeps every rule, for the most kits and for fewer', () => {
    let filled = 0;
    fc.assert(
      fc.property(kitStocks, fc.nat(), (stock, fewer) => {
        const most = countKits(stock);
        const kits = most - (fewer % (most + 1));
        const groups = fillKits(stock, kits);
        expect(total(groups.map(({ count }) => count))).toBe(kits);
        for (const { squares } of groups) {
          expect(total(squares)).toBe(stock.perKit);
          expect(squares.filter((own) => own > 0).length).toBeGreaterThanOrEqual(stock.distinct);
          for (const [print, own] of squares.entries()) {
            expect(own).toBeLessThanOrEqual(stock.prints[print]?.most ?? 0);
          }
        }
        for (const [print, { squares }] of stock.prints.entries()) {
          const used = total(groups.map((group) => group.count * (group.squares[print] ?? 0)));
          expect(used).toBeLessThanOrEqual(squares);
        }
        filled += Number(kits > 1);
      }),
      { numRuns: 2000 },
    );
    expect(filled).toBeGreaterThan(300);
  });

  test('fillKits groups kits alike: never two groups of one make-up, few groups in all', () => {
    fc.assert(
      fc.property(kitStocks, (stock) => {
        const groups = fillKits(stock, countKits(stock));
        expect(new Set(groups.map(({ squares }) => squares.join())).size).toBe(groups.length);
        expect(groups.length).toBeLessThanOrEqual(stock.prints.length + 1);
        const counts = groups.map(({ count }) => count);
        expect(counts).toEqual(counts.toSorted((one, other) => other - one));
      }),
    );
  });
});
