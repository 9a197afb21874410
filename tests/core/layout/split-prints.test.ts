import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitPrints } from '#core/layout/split-prints.ts';

const part = fc.record({
  cells: fc.integer({ min: 0, max: 14 }),
  most: fc.integer({ min: 1, max: 7 }),
});
const supply = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 8 });
const fill = (blocks: readonly number[], most: number) =>
  blocks.reduce((sum, own) => sum + Math.min(own, most), 0);

describe('splitPrints', () => {
  test('splitPrints finds a split exactly where trying all of them does', () => {
    fc.assert(
      fc.property(supply, part, part, (all, first, second) => {
        const fits = (isFirst: (at: number) => boolean) =>
          fill(
            all.filter((_, at) => isFirst(at)),
            first.most,
          ) >= first.cells &&
          fill(
            all.filter((_, at) => !isFirst(at)),
            second.most,
          ) >= second.cells;
        const split = splitPrints(all, first, second);
        if (split !== undefined) {
          expect(split.length).toBe(all.length);
          expect(fits((at) => split[at] === true)).toBe(true);
          return;
        }
        for (let set = 0; set < 2 ** all.length; set += 1) {
          expect(fits((at) => ((set >> at) & 1) === 1)).toBe(false);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
