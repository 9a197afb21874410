import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apportionBlocks } from '#core/cloth/apportion-blocks.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const blocks = fc.integer({ min: 0, max: 2500 });
const shares = fc
  .array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 26 })
  .filter((list) => list.some((share) => share > 0))
  .map(deepFreeze);

describe('apportionBlocks', () => {
  test('apportionBlocks(10, three alike) is 4, 3, 3: ties to the earlier', () => {
    expect(apportionBlocks(10, [1, 1, 1])).toEqual([4, 3, 3]);
    expect(apportionBlocks(11, [1, 1, 1])).toEqual([4, 4, 3]);
  });

  test('apportionBlocks(48, tenths that are not exact) gives each its whole due', () => {
    expect(apportionBlocks(10, [0.1, 0.2, 0.7])).toEqual([1, 2, 7]);
    expect(apportionBlocks(48, [0.1, 0.1, 0.1])).toEqual([16, 16, 16]);
  });

  test('apportionBlocks gives nothing to a print without share', () => {
    expect(apportionBlocks(7, [0, 1, 0])).toEqual([0, 7, 0]);
    expect(apportionBlocks(0, [1, 2])).toEqual([0, 0]);
  });

  test('apportionBlocks gives out all blocks, and each print its due rounded up or down', () => {
    fc.assert(
      fc.property(blocks, shares, (count, list) => {
        const given = apportionBlocks(count, list);
        const total = list.reduce((sum, share) => sum + share, 0);
        expect(given.reduce((sum, one) => sum + one, 0)).toBe(count);
        for (const [print, one] of given.entries()) {
          const due = (count * (list[print] ?? 0)) / total;
          expect(Math.abs(one - due)).toBeLessThan(1);
        }
      }),
    );
  });

  test('apportionBlocks gives exact counts back when the shares are counts', () => {
    fc.assert(
      fc.property(shares, (counts) => {
        const total = counts.reduce((sum, count) => sum + count, 0);
        expect(apportionBlocks(total, counts)).toEqual(counts);
      }),
    );
  });

  test('apportionBlocks does not care for the scale of the shares', () => {
    fc.assert(
      fc.property(blocks, shares, fc.integer({ min: 2, max: 1000 }), (count, list, scale) => {
        expect(
          apportionBlocks(
            count,
            list.map((share) => share * scale),
          ),
        ).toEqual(apportionBlocks(count, list));
      }),
    );
  });

  test('apportionBlocks never gives a print of more share fewer blocks', () => {
    fc.assert(
      fc.property(blocks, shares, (count, list) => {
        const given = apportionBlocks(count, list);
        for (const [one, share] of list.entries()) {
          for (const [other, less] of list.entries()) {
            if (share > less) expect(given[one]).toBeGreaterThanOrEqual(given[other] ?? 0);
          }
        }
      }),
    );
  });
});
