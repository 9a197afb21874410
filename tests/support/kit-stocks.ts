import fc from 'fast-check';
import type { KitStock } from '#core/kits/most-kits.ts';
import { deepFreeze } from './deep-freeze.ts';

/** Stocks small enough to be checked by other means. */
export const kitStocks: fc.Arbitrary<KitStock> = fc
  .record({
    prints: fc.array(
      fc.record({ squares: fc.integer({ min: 0, max: 24 }), most: fc.integer({ min: 0, max: 5 }) }),
      { minLength: 1, maxLength: 5 },
    ),
    backing: fc.integer({ min: 0, max: 60 }),
    perKit: fc.integer({ min: 1, max: 8 }),
    distinct: fc.integer({ min: 1, max: 4 }),
  })
  .map(({ backing, ...stock }) =>
    deepFreeze({
      ...stock,
      others: [{ role: 'backing' as const, squares: backing, perKit: stock.perKit }],
    }),
  );
