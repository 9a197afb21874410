import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { settleSandwich, type WashLayer } from '#core/wash/settle-sandwich.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const sandwiches: fc.Arbitrary<readonly WashLayer[]> = fc.array(
  fc.record({
    rate: fc.double({ min: -0.1, max: 0.3, noNaN: true }),
    weight: fc.double({ min: 1, max: 2000, noNaN: true }),
  }),
  { minLength: 1, maxLength: 6 },
);
const bucklings = fc.double({ min: 0, max: 1, noNaN: true });

const weightedMean = (layers: readonly WashLayer[]) =>
  layers.reduce((sum, { rate, weight }) => sum + rate * weight, 0) /
  layers.reduce((sum, { weight }) => sum + weight, 0);
const greatest = (layers: readonly WashLayer[]) => Math.max(...layers.map(({ rate }) => rate));

describe('settleSandwich', () => {
  test('settleSandwich of one layer is what that layer wants', () => {
    expect(settleSandwich([{ rate: 0.05, weight: 170 }])).toBeCloseTo(0.05, 15);
  });

  test('settleSandwich with β = 1 is the weighted mean', () => {
    fc.assert(
      fc.property(sandwiches, (layers) => {
        expect(settleSandwich(layers, 1)).toBeCloseTo(weightedMean(layers), 12);
      }),
    );
  });

  test('settleSandwich with β = 0 is the greatest rate', () => {
    fc.assert(
      fc.property(sandwiches, (layers) => {
        expect(settleSandwich(layers, 0)).toBeCloseTo(greatest(layers), 12);
      }),
    );
  });

  test('settleSandwich lies between the two whatever β', () => {
    fc.assert(
      fc.property(sandwiches, bucklings, (layers, buckling) => {
        const rest = settleSandwich(layers, buckling);
        expect(rest).toBeGreaterThanOrEqual(weightedMean(layers) - 1e-12);
        expect(rest).toBeLessThanOrEqual(greatest(layers) + 1e-12);
      }),
    );
  });

  test('settleSandwich moves no more than its inputs move', () => {
    const moves = fc.array(fc.double({ min: -0.02, max: 0.02, noNaN: true }), {
      minLength: 6,
      maxLength: 6,
    });
    fc.assert(
      fc.property(sandwiches, moves, bucklings, (layers, by, buckling) => {
        const moved = layers.map((layer, i) => ({ ...layer, rate: layer.rate + (by[i] ?? 0) }));
        const most = Math.max(...layers.map((_, i) => Math.abs(by[i] ?? 0)));
        const shift = settleSandwich(moved, buckling) - settleSandwich(layers, buckling);
        expect(Math.abs(shift)).toBeLessThanOrEqual(most + 1e-12);
      }),
    );
  });

  test('settleSandwich does not depend on the order of the layers, nor on the unit of weight', () => {
    fc.assert(
      fc.property(sandwiches, (layers) => {
        const rest = settleSandwich(deepFreeze(layers));
        expect(settleSandwich(layers.toReversed())).toBeCloseTo(rest, 12);
        const ounces = layers.map((layer) => ({ ...layer, weight: layer.weight / 33.9057 }));
        expect(settleSandwich(ounces)).toBeCloseTo(rest, 12);
      }),
    );
  });

  test('settleSandwich splits a layer in two alike without moving', () => {
    fc.assert(
      fc.property(sandwiches, (layers) => {
        const halves = layers.flatMap((layer) => {
          const half = { ...layer, weight: layer.weight / 2 };
          return [half, half];
        });
        expect(settleSandwich(halves)).toBeCloseTo(settleSandwich(layers), 12);
      }),
    );
  });

  test('settleSandwich without a layer throws, since no caller may ask that', () => {
    expect(() => settleSandwich([])).toThrow('at least one layer');
  });
});
