import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isRearranged, readHand, writeHand } from '../../../client/data/hand-grid.ts';

/** A grid as large as a layout may be. */
const grid = fc.integer({ min: 1, max: 40 }).chain((columns) =>
  fc.array(
    fc.string({
      unit: fc.constantFrom(...'ABCXYZ'),
      minLength: columns,
      maxLength: columns,
    }),
    { minLength: 1, maxLength: 40 },
  ),
);

describe('readHand and writeHand', () => {
  test('readHand reads what writeHand wrote, and an address takes it as it is', () => {
    fc.assert(
      fc.property(grid, (cells) => {
        const fragment = writeHand(cells);
        expect(readHand(fragment)).toEqual(cells);
        expect(new URL(fragment, 'https://quilt.example/layout').hash).toBe(fragment);
      }),
    );
  });

  test.each([
    ['', 'nothing'],
    ['#', 'nothing'],
    ['#work', 'an anchor of a page'],
    ['#AB-A', 'rows of unlike length'],
    ['#AB--AB', 'a row of nothing'],
    ['#A.', 'a free cell'],
    [`#${'A'.repeat(41)}`, 'a row too long'],
    [`#${Array.from({ length: 41 }, () => 'A').join('-')}`, 'too many rows'],
  ])('readHand(%j) is no grid: %s', (fragment) => {
    expect(readHand(fragment)).toBeUndefined();
  });

  test('writeHand of no grid is empty', () => {
    expect(writeHand(undefined)).toBe('');
  });
});

describe('isRearranged', () => {
  test('isRearranged holds of the same blocks laid otherwise, in a grid of the same sides', () => {
    expect(isRearranged(['ABC', 'ABC'], ['CBA', 'BCA'])).toBe(true);
    expect(isRearranged(['ABC', 'ABC'], ['AB', 'CA', 'BC'])).toBe(false);
    expect(isRearranged(['ABC', 'ABC'], ['ABC', 'ABB'])).toBe(false);
    expect(isRearranged(['AB'], ['AB', 'AB'])).toBe(false);
  });
});
