import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countTouching } from '#core/layout/count-touching.ts';
import { layFamilies } from '#core/layout/lay-families.ts';
import { letterOf } from '#core/layout/letter-of.ts';
import { tallyPrints } from '../../support/layouts.ts';

describe('layFamilies', () => {
  test('layFamilies(5×5) of four prints lays ten of one where each has just enough', () => {
    // Rows 1, 3, 5 from the first two prints (15 cells, at most 9 of one), rows 2 and 4 from the others.
    const cells = layFamilies({ columns: 5, rows: 5 }, [9, 6, 5, 5]);
    expect(cells).toBeDefined();
    expect(layFamilies({ columns: 5, rows: 5 }, [10, 5, 5, 5])).toBeUndefined();
  });

  test('layFamilies touches nowhere, not even at corners, and uses no more than there is', () => {
    const side = fc.integer({ min: 1, max: 9 });
    const supply = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 7 });
    let laid = 0;
    fc.assert(
      fc.property(side, side, supply, (columns, rows, blocks) => {
        const found = layFamilies({ columns, rows }, blocks);
        if (found === undefined) return;
        laid += 1;
        const cells = found.map((row) => row.map(letterOf).join(''));
        expect(cells.map((row) => row.length)).toEqual(Array(rows).fill(columns));
        expect(countTouching(cells)).toEqual({ sides: 0, corners: 0 });
        for (const [print, used] of tallyPrints(cells, blocks.length).entries()) {
          expect(used).toBeLessThanOrEqual(blocks[print] ?? 0);
        }
      }),
      { numRuns: 1000 },
    );
    expect(laid).toBeGreaterThan(100);
  });
});
