import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buyMore } from '#core/kits/buy-more.ts';
import { countKits, type KitStock, limitKits } from '#core/kits/most-kits.ts';
import { kitStocks } from '../../support/kit-stocks.ts';

type Lacks = ReturnType<typeof buyMore>;

/** The stock with what was bought. */
function stockUp(stock: KitStock, lacks: Lacks, most: number): KitStock {
  const bought = (role: string, print?: number) =>
    lacks
      .filter((lack) => lack.role === role && lack.print === print)
      .reduce((sum, { squares }) => sum + squares, 0);
  const fresh = lacks.filter(({ role, print }) => role === 'top' && print === undefined);
  return {
    ...stock,
    prints: [
      ...stock.prints.map((print, at) => ({
        ...print,
        squares: print.squares + bought('top', at),
      })),
      ...fresh.map(({ squares }) => ({ squares, most })),
    ],
    others: stock.others.map((other) => ({
      ...other,
      squares: other.squares + bought(other.role),
    })),
  };
}

const amount = (lacks: Lacks) => lacks.reduce((sum, { squares }) => sum + squares, 0);

describe('buyMore', () => {
  test('buyMore for kits that can be made is nothing', () => {
    const stock = { prints: [{ squares: 40, most: 9 }], others: [], perKit: 8, distinct: 1 };
    expect(buyMore(stock, { kits: 5, most: 9 })).toEqual([]);
    expect(buyMore(stock, { kits: 6, most: 9 })).toEqual([{ role: 'top', print: 0, squares: 8 }]);
  });

  test('buyMore asks for a print that is not there where all that are there are used up', () => {
    const stock = { prints: [{ squares: 40, most: 4 }], others: [], perKit: 8, distinct: 3 };
    expect(buyMore(stock, { kits: 5, most: 4 })).toEqual([
      { role: 'top', squares: 15 },
      { role: 'top', squares: 5 },
    ]);
  });

  test('buyMore cannot make more prints fit into a kit than it has squares', () => {
    const stock = { prints: [{ squares: 40, most: 4 }], others: [], perKit: 2, distinct: 3 };
    expect(buyMore(stock, { kits: 5, most: 4 })).toEqual([]);
  });

  test('buyMore is enough: with it the kits can be made', () => {
    fc.assert(
      fc.property(kitStocks, fc.integer({ min: 1, max: 20 }), (stock, kits) => {
        fc.pre(stock.distinct <= stock.perKit);
        const lacks = buyMore(stock, { kits, most: 3 });
        expect(limitKits(stockUp(stock, lacks, 3), kits)).toEqual([]);
        expect(amount(lacks) === 0).toBe(countKits(stock) >= kits);
      }),
      { numRuns: 1000 },
    );
  });

  test('buyMore is the least: with a square less, wherever it was, they cannot', () => {
    fc.assert(
      fc.property(kitStocks, fc.integer({ min: 1, max: 20 }), (stock, kits) => {
        fc.pre(stock.distinct <= stock.perKit);
        const lacks = buyMore(stock, { kits, most: 3 });
        for (const at of lacks.keys()) {
          const fewer = lacks.map((lack, index) =>
            index === at ? { ...lack, squares: lack.squares - 1 } : lack,
          );
          expect(limitKits(stockUp(stock, fewer, 3), kits)).not.toEqual([]);
        }
      }),
      { numRuns: 500 },
    );
  });
});
