/**
 * Stacking of errors, root sum of squares.
 * - Independent errors add as the root of the sum of squares: any tolerance handbook; propagation
 *   formula, itl.nist.gov, mpc552. Read.
 * - Worked values (arithmetic): 6 seams of 1/16 in: worst case 3/8, root sum of squares 0.153093;
 *   8 seams: 1/2 and 0.176777; 9 of 1/8 in: 1 1/8 and 0.375; 3 and 4 give 5.
 */
import { describe, expect, test } from 'vitest';
import { predictMismatch } from '#core/sewing/predict-mismatch.ts';

const NONE = { seam: 0, cut: 0, ease: 12.7 };

describe('predictMismatch', () => {
  test.each([
    [6, 1 / 16, 0.153093, 0.375],
    [8, 1 / 16, 0.176777, 0.5],
    [9, 1 / 8, 0.375, 1.125],
  ])(
    'predictMismatch(%d cuts of %d in) stacks to %d in, below the worst case %d (arithmetic)',
    (cuts, error, stacked, worst) => {
      const { rowDeviation } = predictMismatch(cuts, { ...NONE, cut: error });
      expect(rowDeviation).toBeCloseTo(stacked, 6);
      expect(rowDeviation).toBeLessThan(worst);
    },
  );

  test('predictMismatch(7 columns, seams of 1/16 in) has 6 joins of 2/16: 0.306186 (arithmetic)', () => {
    // A join that is off by ε takes ε from both its blocks.
    expect(predictMismatch(7, { ...NONE, seam: 1 / 16 }).rowDeviation).toBeCloseTo(2 * 0.153093, 5);
  });

  test('predictMismatch(9 cuts of 1, one join more of 2·σ) makes 3 and 4 to 5 (arithmetic)', () => {
    // 9 cuts of 1 stack to 3; 8 joins whose doubled errors stack to 4 have σ = 4 / (2·√8).
    const seam = 4 / (2 * Math.sqrt(8));
    expect(predictMismatch(9, { ...NONE, cut: 1, seam }).rowDeviation).toBeCloseTo(5, 12);
  });
});
