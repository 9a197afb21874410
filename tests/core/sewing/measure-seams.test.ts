import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measureSeams } from '#core/sewing/measure-seams.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const block = deepFreeze({ cut: 120, seam: 10, snipDepth: 5, snipPitch: 6 });
const grid = fc.record({
  columns: fc.integer({ min: 1, max: 50 }),
  rows: fc.integer({ min: 1, max: 50 }),
});

describe('measureSeams', () => {
  test('measureSeams(3×2 of 120 with seam 10) is plain geometry', () => {
    const seams = measureSeams({ columns: 3, rows: 2 }, block, 2);
    expect(seams.quilting).toBeCloseTo(6 * 2 * Math.hypot(120, 120), 9);
    expect(seams.joins).toBe(4 * 120);
    expect(seams.rows).toBe(3 * 100 + 20);
    expect(seams.border).toBe(2 * 2 * (300 + 200));
  });

  test('measureSeams of one block has no joins and no rows', () => {
    expect(measureSeams({ columns: 1, rows: 1 }, block, 1)).toMatchObject({ joins: 0, rows: 0 });
  });

  test('measureSeams grows at every stage with the grid', () => {
    fc.assert(
      fc.property(grid, ({ columns, rows }) => {
        const less = measureSeams({ columns, rows }, block, 2);
        const more = measureSeams({ columns: columns + 1, rows: rows + 1 }, block, 2);
        for (const stage of ['quilting', 'joins', 'rows', 'border'] as const) {
          expect(more[stage]).toBeGreaterThan(less[stage]);
        }
      }),
    );
  });

  test('measureSeams of a border is as long as its passes are many', () => {
    const once = measureSeams({ columns: 4, rows: 5 }, block, 1).border;
    expect(measureSeams({ columns: 4, rows: 5 }, block, 3).border).toBe(3 * once);
  });
});
