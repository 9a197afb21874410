import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countColumns, layBands } from '#core/drawing/lay-bands.ts';

const group = fc.record({
  count: fc.integer({ min: 1, max: 40 }),
  length: fc.integer({ min: 20, max: 600 }),
  reads: fc.constant(''),
  pieces: fc.constant([]),
});
const roll = fc.record({
  groups: fc.array(group, { minLength: 1, maxLength: 6 }),
  width: fc.integer({ min: 200, max: 2000 }),
  squaring: fc.integer({ min: 0, max: 50 }),
  rest: fc.integer({ min: 0, max: 900 }),
});

describe('layBands', () => {
  test('layBands(roll) numbers every strip once, in the order of the cuts', () => {
    fc.assert(
      fc.property(roll, (one) => {
        const numbers = layBands(one).flatMap(({ number }) => number ?? []);
        const strips = one.groups.reduce((sum, { count }) => sum + count, 0);
        expect(numbers).toEqual(Array.from({ length: strips }, (_, at) => at + 1));
      }),
    );
  });

  test('layBands(roll) loses no cloth, and lays bands of a column on one another', () => {
    fc.assert(
      fc.property(roll, (one) => {
        const bands = layBands(one);
        const columns = Math.max(...bands.map(({ column }) => column + 1));
        expect(columns).toBeLessThanOrEqual(countColumns(one));
        const cut = one.groups.reduce((sum, { count, length }) => sum + count * length, 0);
        const laid = bands.reduce((sum, { height }) => sum + height, 0);
        expect(laid).toBeCloseTo(cut + one.squaring + one.rest, 6);
        for (const [at, band] of bands.entries()) {
          const above = bands[at - 1];
          const isNext = above !== undefined && above.column === band.column;
          expect(band.y).toBeCloseTo(isNext ? above.y + above.height : 0, 6);
        }
      }),
    );
  });
});

describe('countColumns', () => {
  test.each([
    [1500, 1],
    [1501, 2],
    [3000, 2],
    [90_000, 4],
  ])('countColumns of a roll 1000 wide and %i long is %i', (rest, columns) => {
    expect(countColumns({ groups: [], width: 1000, squaring: 0, rest })).toBe(columns);
  });
});
