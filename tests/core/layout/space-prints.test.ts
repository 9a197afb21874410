import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spacePrints } from '#core/layout/space-prints.ts';

describe('spacePrints', () => {
  test('spacePrints([1, 1, 1], 6) takes turns', () => {
    expect(spacePrints([1, 1, 1], 6)).toEqual([0, 1, 2, 0, 1, 2]);
  });

  test('spacePrints gives each print just its weight where the places are the sum of the weights', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 8 }),
        (weights) => {
          const sum = weights.reduce((total, weight) => total + weight, 0);
          fc.pre(sum > 0);
          const places = spacePrints(weights, sum);
          expect(weights.map((_, at) => places.filter((own) => own === at).length)).toEqual(
            weights,
          );
        },
      ),
    );
  });
});
