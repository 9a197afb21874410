import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countSnips } from '#core/sewing/count-snips.ts';

const grid = fc.record({
  columns: fc.integer({ min: 1, max: 50 }),
  rows: fc.integer({ min: 1, max: 50 }),
});
const block = fc.record({
  cut: fc.integer({ min: 50, max: 600 }),
  snipPitch: fc.integer({ min: 1, max: 100 }),
});

describe('countSnips', () => {
  test('countSnips(2×2, pitch 10) counts 36 a block before joining', () => {
    const snips = countSnips({ columns: 2, rows: 2 }, { cut: 100, snipPitch: 10 });
    expect(snips).toEqual({ perSide: 9, beforeJoining: 4 * 36, afterJoining: 108 });
  });

  test('countSnips(8 1/2 in, every 1/4 in) counts 33 a side: 34 gaps, none at the corners', () => {
    const { perSide } = countSnips({ columns: 1, rows: 1 }, { cut: 215.9, snipPitch: 6.35 });
    expect(perSide).toBe(33);
  });

  test('countSnips with a pitch wider than the side counts none', () => {
    const snips = countSnips({ columns: 3, rows: 3 }, { cut: 50, snipPitch: 60 });
    expect(snips).toEqual({ perSide: 0, beforeJoining: 0, afterJoining: 0 });
  });

  test('countSnips leaves no gap wider than the pitch, and one snip fewer would', () => {
    fc.assert(
      fc.property(block, ({ cut, snipPitch }) => {
        const { perSide } = countSnips({ columns: 1, rows: 1 }, { cut, snipPitch });
        expect(cut / (perSide + 1)).toBeLessThanOrEqual(snipPitch + 1e-6);
        if (perSide > 0) expect(cut / perSide).toBeGreaterThan(snipPitch);
      }),
    );
  });

  test('countSnips after joining counts each drawn line of the grid once', () => {
    fc.assert(
      fc.property(grid, block, ({ columns, rows }, one) => {
        const { perSide, afterJoining } = countSnips({ columns, rows }, one);
        // Upright lines: columns + 1, each of `rows` sides; level ones the same turned.
        expect(afterJoining).toBe(((columns + 1) * rows + (rows + 1) * columns) * perSide);
      }),
    );
  });

  test('countSnips after joining is never more than before, and the same for one block', () => {
    fc.assert(
      fc.property(grid, block, (cells, one) => {
        const { beforeJoining, afterJoining } = countSnips(cells, one);
        expect(afterJoining).toBeLessThanOrEqual(beforeJoining);
        const single = countSnips({ columns: 1, rows: 1 }, one);
        expect(single.afterJoining).toBe(single.beforeJoining);
      }),
    );
  });
});
