import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCounts } from '#core/wish/read-counts.ts';

describe('readCounts', () => {
  test('readCounts finds both counts in every way of saying them', () => {
    const counts = fc.integer({ min: 1, max: 100 });
    fc.assert(
      fc.property(counts, counts, (columns, rows) => {
        for (const words of [
          `${columns} by ${rows} blocks`,
          `${columns} blocks by ${rows}`,
          `${columns} blocks x ${rows} blocks`,
          `${columns} columns and ${rows} rows`,
          `${columns} blocks across, ${rows} down`,
          `${columns} blocks wide by ${rows} blocks long`,
          `${rows} rows of ${columns}`,
          `${rows} rows of ${columns}, blue`,
          `${columns} x ${rows} grid`,
          `a grid of ${columns} by ${rows}.`,
        ]) {
          expect([words, readCounts(words)]).toEqual([words, { columns, rows }]);
        }
      }),
      { numRuns: 20 },
    );
  });

  test('readCounts refuses counts beyond what a quilt may have', () => {
    expect(readCounts('101 by 8 blocks')).toBeUndefined();
    expect(readCounts('0 by 8 blocks')).toBeUndefined();
  });

  test('readCounts takes lengths for no counts', () => {
    expect(readCounts('40 by 50 inches')).toBeUndefined();
    expect(readCounts('a grid of 40 by 50 inches')).toBeUndefined();
    expect(readCounts('8.5 by 8.5 blocks')).toBeUndefined();
  });
});
