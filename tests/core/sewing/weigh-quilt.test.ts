import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { weighQuilt } from '#core/sewing/weigh-quilt.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const quilt = fc
  .record({
    blocks: fc.integer({ min: 1, max: 2500 }),
    cut: fc.integer({ min: 50, max: 600 }),
    gsm: fc.integer({ min: 20, max: 4000 }),
  })
  .map(deepFreeze);

describe('weighQuilt', () => {
  test('weighQuilt(a square metre of 300 g/m²) is 300 g dry, 450 g wet, 3 litres of drum', () => {
    expect(weighQuilt({ blocks: 100, cut: 100, gsm: 300 })).toEqual({
      dry: 300,
      wet: 450,
      drumLitres: 3,
      machine: 'household',
    });
  });

  test.each([
    [6000, 'household'],
    [6001, 'large'],
    [10_000, 'large'],
    [10_001, 'laundry'],
  ])('weighQuilt(%d g) goes to the %s machine', (gsm, machine) => {
    expect(weighQuilt({ blocks: 1, cut: 1000, gsm }).machine).toBe(machine);
  });

  test('weighQuilt grows in proportion to blocks, mass of cloth and the square of the cut', () => {
    fc.assert(
      fc.property(quilt, (one) => {
        const { dry, wet, drumLitres } = weighQuilt(one);
        const { blocks, cut, gsm } = one;
        expect(weighQuilt({ ...one, blocks: 2 * blocks }).dry).toBeCloseTo(2 * dry, 6);
        expect(weighQuilt({ ...one, gsm: 3 * gsm }).dry).toBeCloseTo(3 * dry, 6);
        expect(weighQuilt({ ...one, cut: 2 * cut }).dry).toBeCloseTo(4 * dry, 6);
        expect(wet).toBeGreaterThan(dry);
        expect(drumLitres).toBeCloseTo(dry / 100, 6);
      }),
    );
  });
});
