import { describe, expect, test } from 'vitest';
import { LENGTH_LIMITS, NUMBER_LIMITS, type Range, SIZE_LIMITS } from '#core/limits.ts';

const RANGES: readonly (readonly [string, Range])[] = [
  ...Object.entries(LENGTH_LIMITS),
  ...Object.entries(NUMBER_LIMITS),
];

describe('LENGTH_LIMITS and NUMBER_LIMITS', () => {
  test.each(RANGES)('%s has a least below its most, both finite', (_, { least, most }) => {
    expect(least).toBeLessThan(most);
    expect(Number.isFinite(least) && Number.isFinite(most)).toBe(true);
  });

  test('LENGTH_LIMITS never begin below nothing', () => {
    for (const { least } of Object.values(LENGTH_LIMITS)) expect(least).toBeGreaterThanOrEqual(0);
  });

  test('LENGTH_LIMITS of what is divided by are above nothing', () => {
    for (const name of ['cut', 'snipPitch', 'rollStep', 'pieceSide', 'stitchLength'] as const) {
      expect(LENGTH_LIMITS[name].least).toBeGreaterThan(0);
    }
    expect(LENGTH_LIMITS.bobbin.least).toBeGreaterThan(0);
    expect(LENGTH_LIMITS.benchmark.least).toBeGreaterThan(0);
  });

  test('LENGTH_LIMITS let the greatest wish be sewn: a target fits in a quilt', () => {
    expect(LENGTH_LIMITS.targetSide.most).toBeLessThanOrEqual(LENGTH_LIMITS.quiltSide.most);
    const bed = LENGTH_LIMITS.bedSide.most + 2 * LENGTH_LIMITS.drop.most;
    expect(bed).toBeLessThanOrEqual(LENGTH_LIMITS.quiltSide.most);
  });

  test('NUMBER_LIMITS of shrink leave some cloth', () => {
    expect(NUMBER_LIMITS.shrink.most).toBeLessThan(100);
    expect(NUMBER_LIMITS.shrink.least).toBeLessThan(0);
  });
});

describe('SIZE_LIMITS', () => {
  test('SIZE_LIMITS are whole and above nothing', () => {
    const { layers, ...sizes } = SIZE_LIMITS;
    for (const size of [...Object.values(sizes), layers.least, layers.most]) {
      expect(Number.isInteger(size) && size > 0).toBe(true);
    }
    expect(layers.least).toBeLessThan(layers.most);
  });

  test('SIZE_LIMITS allow no more blocks than columns and rows can make, and a letter a print', () => {
    const most = NUMBER_LIMITS.columns.most * NUMBER_LIMITS.rows.most;
    expect(SIZE_LIMITS.blocks).toBeLessThanOrEqual(most);
    expect(SIZE_LIMITS.prints).toBe(NUMBER_LIMITS.prints.most);
    expect(SIZE_LIMITS.prints).toBeLessThanOrEqual(26);
  });
});
