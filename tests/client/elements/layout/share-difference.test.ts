import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shareDifference } from '../../../../client/elements/layout/share-difference.ts';

const print = fc.record({ count: fc.nat(400), least: fc.nat(40), free: fc.boolean() });

describe('shareDifference', () => {
  test('shareDifference fills the grid, keeps what is not free and what is pinned, or gives nothing', () => {
    fc.assert(
      fc.property(
        fc.array(print, { minLength: 2, maxLength: 26 }),
        fc.nat(1600),
        (prints, blocks) => {
          const counts = prints.map(({ count }) => count);
          const least = prints.map((one) => one.least);
          const isFree = (at: number) => prints[at]?.free === true;
          const shared = shareDifference({ counts, blocks, least, isFree });
          const kept = prints.reduce((sum, one) => sum + (one.free ? one.least : one.count), 0);
          const isOpen = prints.some(({ free }) => free);
          expect(shared !== undefined).toBe(isOpen ? kept <= blocks : kept === blocks);
          if (shared === undefined) return;
          expect(shared.reduce((sum, count) => sum + count, 0)).toBe(blocks);
          for (const [at, count] of shared.entries()) {
            if (isFree(at)) expect(count).toBeGreaterThanOrEqual(least[at] ?? 0);
            else expect(count).toBe(counts[at]);
          }
        },
      ),
    );
  });
});
