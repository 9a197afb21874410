/**
 * Named sizes.
 * - Full-size crib, interior 28 by 52 3/8 in, each ± 5/8 in: 16 CFR 1508.3, now 1219. Read.
 * - Mattress of such a crib, at least 27 1/4 by 51 1/4 in: jjrlab.com quoting the rule; another copy
 *   has 51 5/8. Read at second hand.
 * - US mattresses: liquisearch.com, "bed size". Read at second hand; pages disagree on twin (38 or 39).
 * - UK and EU mattresses in centimetres: from memory; EU widths and lengths read at second hand.
 * - Throw and lap quilt: common practice, no source, and so not checked here.
 */
import { describe, expect, test } from 'vitest';
import type { Region, SizeName } from '#core/contract.ts';
import { fromMillimetres } from '#core/length.ts';
import { findSize } from '#core/tables/sizes.ts';

function sides(name: SizeName, region: Region, unit: 'in' | 'cm'): readonly number[] {
  const row = findSize(name, region);
  if (row === undefined) throw new Error(`No ${name} in ${region}`);
  return [fromMillimetres(row.width, unit), fromMillimetres(row.height, unit)];
}

describe('findSize', () => {
  test.each(['us', 'uk', 'eu'] as const)(
    'findSize(cot, %s) is the crib of the rule, 28 by 52 3/8 in (read)',
    (region) => {
      expect(sides('cot', region, 'in')).toEqual([28, 52.375]);
      // The rule gives 71 by 133 cm beside it.
      expect(sides('cot', region, 'cm').map(Math.round)).toEqual([71, 133]);
    },
  );

  test('findSize(cot) covers the mattress of the crib and is no wider than its tolerance (second hand)', () => {
    const [width = 0, height = 0] = sides('cot', 'us', 'in');
    expect(width).toBeGreaterThanOrEqual(27.25);
    expect(height).toBeGreaterThanOrEqual(51.625);
    expect(width).toBeLessThanOrEqual(28.625);
    expect(height).toBeLessThanOrEqual(53);
  });

  test.each([
    ['full', 54, 75],
    ['double', 54, 75],
    ['queen', 60, 80],
    ['king', 76, 80],
    ['california-king', 72, 84],
  ] as const)('findSize(%s, us) is %d by %d in (read at second hand)', (name, width, height) => {
    expect(sides(name, 'us', 'in')).toEqual([width, height]);
  });

  test('findSize(twin, us) is 38 or 39 by 75 in: pages disagree (read at second hand)', () => {
    const [width, height] = sides('twin', 'us', 'in');
    expect([38, 39]).toContain(width);
    expect(height).toBe(75);
  });

  test.each([
    ['single', 90, 190],
    ['double', 135, 190],
    ['king', 150, 200],
    ['super-king', 180, 200],
  ] as const)('findSize(%s, uk) is %d by %d cm (from memory)', (name, width, height) => {
    expect(sides(name, 'uk', 'cm')).toEqual([width, height]);
  });

  test.each([
    ['single', 90],
    ['double', 140],
    ['queen', 160],
    ['king', 180],
  ] as const)(
    'findSize(%s, eu) is %d by 200 cm (widths read at second hand, names practice)',
    (name, width) => {
      expect(sides(name, 'eu', 'cm')).toEqual([width, 200]);
    },
  );

  test('UK mattresses in inches are within an inch and a half of those in centimetres', () => {
    // 36x75, 54x75, 60x78, 72x78 in: liquisearch.com, read at second hand.
    for (const [name, width, height] of [
      ['single', 36, 75],
      ['double', 54, 75],
      ['king', 60, 78],
      ['super-king', 72, 78],
    ] as const) {
      const [across = 0, along = 0] = sides(name, 'uk', 'in');
      expect(Math.abs(across - width)).toBeLessThan(1.5);
      expect(Math.abs(along - height)).toBeLessThan(1.5);
    }
  });
});
