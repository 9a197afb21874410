/**
 * Largest remainders against all there is: of every way to share whole blocks among the prints, the
 * method gives one whose squared distance from the exact dues is least (Birkhoff, from memory: largest
 * remainders minimise the distance in every such norm).
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apportionBlocks } from '#core/cloth/apportion-blocks.ts';

function* share(blocks: number, prints: number): Generator<readonly number[]> {
  if (prints === 1) {
    yield [blocks];
    return;
  }
  for (let first = 0; first <= blocks; first += 1) {
    for (const rest of share(blocks - first, prints - 1)) yield [first, ...rest];
  }
}

describe('apportionBlocks', () => {
  test('apportionBlocks is nearest to the dues among all ways of sharing', () => {
    const shares = fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 12 }), shares, (blocks, weights) => {
        const total = weights.reduce((sum, weight) => sum + weight, 0);
        const distance = (given: readonly number[]) =>
          weights.reduce(
            (sum, weight, print) => sum + ((given[print] ?? 0) - (blocks * weight) / total) ** 2,
            0,
          );
        const least = Math.min(...[...share(blocks, weights.length)].map(distance));
        expect(distance(apportionBlocks(blocks, weights))).toBeCloseTo(least, 9);
      }),
    );
  });
});
