import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findMiddle } from '#core/sewing/find-middle.ts';

test('findMiddle has as many blocks before it as after it', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100 }), (columns) => {
      const { from, to } = findMiddle(columns);
      expect(from - 1).toBe(columns - to);
      expect(to - from).toBe(columns % 2 === 0 ? 1 : 0);
    }),
  );
});
