import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countTouching } from '#core/layout/count-touching.ts';
import { layChecks } from '#core/layout/lay-checks.ts';
import { letterOf } from '#core/layout/letter-of.ts';
import { tallyPrints } from '../../support/layouts.ts';

const cellsOf = (columns: number, rows: number, supply: readonly number[]) =>
  layChecks({ columns, rows }, supply).map((row) => row.map(letterOf).join(''));

describe('layChecks', () => {
  test('layChecks gives one half to the print that is half of all', () => {
    // 16 by 19 cells: 152 of one print, and 96, 8 and 48 of others make the other 152.
    const cells = cellsOf(16, 19, [96, 152, 8, 48]);
    expect(countTouching(cells).sides).toBe(0);
    expect(tallyPrints(cells, 4)).toEqual([96, 152, 8, 48]);
  });

  test('layChecks keeps the two parts of a print apart that goes from one half into the other', () => {
    // Three prints of about a third each cannot be split in halves.
    const cells = cellsOf(14, 9, [42, 42, 42]);
    expect(countTouching(cells).sides).toBe(0);
    expect(countTouching(cellsOf(67, 28, [16, 583, 704, 586])).sides).toBe(0);
  });

  test('layChecks fills every cell and uses no more than there is', () => {
    const side = fc.integer({ min: 1, max: 9 });
    const supply = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(side, side, supply, (columns, rows, own) => {
        const half = Math.ceil((columns * rows) / 2);
        const capped = own.map((blocks) => Math.min(blocks, half));
        fc.pre(capped.reduce((sum, blocks) => sum + blocks, 0) >= columns * rows);
        const cells = cellsOf(columns, rows, capped);
        const used = tallyPrints(cells, own.length);
        expect(used.reduce((sum, count) => sum + count, 0)).toBe(columns * rows);
        for (const [print, count] of used.entries()) {
          expect(count).toBeLessThanOrEqual(own[print] ?? 0);
        }
      }),
      { numRuns: 500 },
    );
  });
});
