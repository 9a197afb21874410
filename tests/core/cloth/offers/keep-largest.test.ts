import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keepLargest } from '#core/cloth/offers/keep-largest.ts';

const isWithin = (one: readonly number[], other: readonly number[]) =>
  one.every((count, kind) => count <= (other[kind] ?? 0));

describe('keepLargest', () => {
  test('keepLargest keeps none that another kept holds, and drops none that no kept one holds', () => {
    const counts = fc.array(fc.nat(4), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(fc.array(counts, { maxLength: 12 }), (all) => {
        const kept = keepLargest(all.map((one) => ({ counts: one, strips: [] }))).map(
          (filling) => filling.counts,
        );
        for (const [at, one] of kept.entries()) {
          const others = kept.filter((_, other) => other !== at);
          expect(others.some((other) => isWithin(one, other))).toBe(false);
        }
        for (const one of all) expect(kept.some((other) => isWithin(one, other))).toBe(true);
      }),
    );
  });
});
