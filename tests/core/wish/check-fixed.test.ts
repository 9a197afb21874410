import { describe, expect, test } from 'vitest';
import { checkFixed, countPinned } from '#core/wish/check-fixed.ts';
import type { Reading } from '#core/wish/reading.ts';

const prints = [{ id: 'a' }, { id: 'b' }];
const check = (fixed: readonly string[]) => {
  const reading: Reading = { unit: 'in', faults: [], assumptions: [], kept: [] };
  checkFixed(reading, { columns: 3, rows: 2, prints, fixed });
  return reading.faults;
};

describe('checkFixed', () => {
  test.each([[['A.B', '...']], [['...', '...']], [['ABA', 'BAB']]])(
    'checkFixed(%j) is sound',
    (fixed) => {
      expect(check(fixed)).toEqual([]);
    },
  );

  test.each([
    [['A.B'], 'too-short', ['fixed'], 2, 1],
    [['A.B', '...', '...'], 'too-long', ['fixed'], 2, 3],
    [['A.B', '..'], 'too-short', ['fixed', 1], 3, 2],
    [['A.B.', '...'], 'too-long', ['fixed', 0], 3, 4],
    [['A.B', '.C.'], 'not-one-of', ['fixed', 1], ['A', 'B', '.'], 'C'],
    [['a..', '...'], 'not-one-of', ['fixed', 0], ['A', 'B', '.'], 'a'],
  ])('checkFixed(%j) is refused with %s at %j', (fixed, code, path, expected, received) => {
    expect(check(fixed)).toEqual([{ code, path, expected, received }]);
  });

  test('checkFixed tells every fault at once', () => {
    expect(check(['A', '.C.', '...']).map(({ code }) => code)).toEqual([
      'too-long',
      'too-short',
      'not-one-of',
    ]);
  });
});

describe('countPinned', () => {
  test('countPinned counts letters over all rows; without a grid nothing is pinned', () => {
    expect(countPinned({ prints, fixed: ['AAB', '.A.'] })).toEqual([3, 1]);
    expect(countPinned({ prints })).toEqual([0, 0]);
  });
});
