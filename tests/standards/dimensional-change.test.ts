import { describe, expect, test } from 'vitest';
import { dimensionalChange } from '#core/wash/measure-change.ts';
import { sewFor, washedSize } from '#core/wash/size-washed.ts';
import { predictWash } from '#core/wash.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';

// DC = 100·(B − A)/A, negative when the cloth shrank: AATCC TM135 and ISO 5077, read in pages that
// quote them. The worked rows are arithmetic from that formula.
const ROWS: readonly (readonly [before: number, after: number, change: number])[] = [
  [250, 240, -4],
  [250, 243.5, -2.6],
  [500, 485, -3],
  [350, 339.5, -3],
  [10, 9.6, -4],
  [10, 9.625, -3.75],
  [18, 17.25, -4.167],
  [18, 17.375, -3.472],
  [18, 17.5, -2.778],
  [380, 384, 1.053],
];

describe('dimensionalChange', () => {
  test.each(ROWS)('dimensionalChange(%d, %d) is %d percent', (before, after, change) => {
    expect(dimensionalChange(before, after)).toBeCloseTo(change, 3);
  });
});

describe('predictWash', () => {
  // AATCC TM135, read: specimens are averaged for length and for width separately.
  test('predictWash averages length and width apart, as TM135 does', () => {
    const pieces = [
      ['length', 9.7],
      ['length', 9.65],
      ['length', 9.75],
      ['width', 9.9],
    ] as const;
    const swatches = pieces.map(([direction, after]) => ({ direction, before: 10, after }));
    const read = resolveWash({ swatches });
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const [along, across] = predictWash(read.value).swatches;
    expect(along).toMatchObject({ direction: 'length', n: 3, change: -3, sd: 0.5 });
    expect(across).toMatchObject({ direction: 'width', n: 1, change: -1 });
  });
});

describe('washedSize', () => {
  // Arithmetic: what is lost twice is lost from what was left, 1 − 0.96·0.98.
  test('washedSize by 4 % and then 2 % is 5.92 % smaller, not 6 %', () => {
    const once = washedSize({ width: 100, height: 100 }, { width: 0.04, height: 0.04 });
    const twice = washedSize(once, { width: 0.02, height: 0.02 });
    expect(100 - twice.width).toBeCloseTo(5.92, 10);
  });

  // Arithmetic: 1 − 0.95·0.97.
  test('washedSize by 5 % and 3 % loses 7.85 % of the area', () => {
    const { width, height } = washedSize({ width: 1, height: 1 }, { width: 0.05, height: 0.03 });
    expect(1 - width * height).toBeCloseTo(0.0785, 12);
  });
});

describe('sewFor', () => {
  // Arithmetic: 60/0.95 and 70/0.97.
  test('sewFor 60 at 5 % is 63.1579 and 70 at 3 % is 72.1649', () => {
    const size = sewFor({ width: 60, height: 70 }, { width: 0.05, height: 0.03 });
    expect(size.width).toBeCloseTo(63.1579, 4);
    expect(size.height).toBeCloseTo(72.1649, 4);
  });
});
