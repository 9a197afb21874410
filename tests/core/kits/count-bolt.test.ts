import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countBolt } from '#core/kits/count-bolt.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const prewash = { length: 0, width: 0 };
const bolt = deepFreeze({
  id: 'a',
  role: 'top' as const,
  print: 'a',
  width: 1117.6,
  length: 9144,
  selvage: 12.7,
  squaring: 25.4,
  prewash,
});

describe('countBolt', () => {
  test('countBolt(ten yards of 44 in, 8.5 in) is 42 strips of 5', () => {
    // By hand: floor((360 − 1) / 8.5) = 42; floor((44 − 1) / 8.5) = 5.
    expect(countBolt(bolt, 215.9)).toMatchObject({ perStrip: 5, strips: 42, squares: 210 });
  });

  test('countBolt takes what a prewash takes from both ways', () => {
    // 44·0.98 − 1 = 42.12 in across; 360·0.95 − 1 = 341 in along.
    const washed = { ...bolt, prewash: { length: 0.05, width: 0.02 } };
    expect(countBolt(washed, 215.9)).toMatchObject({ perStrip: 4, strips: 40, squares: 160 });
  });

  test('countBolt of a bolt narrower or shorter than a block is nothing', () => {
    expect(countBolt({ ...bolt, width: 200 }, 215.9)).toMatchObject({ strips: 0, squares: 0 });
    expect(countBolt({ ...bolt, length: 10 }, 215.9)).toMatchObject({
      usableLength: 0,
      squares: 0,
    });
  });

  test('countBolt: a longer or wider bolt never gives fewer', () => {
    const size = fc.integer({ min: 100, max: 5000 });
    fc.assert(
      fc.property(size, size, fc.nat(900), fc.integer({ min: 50, max: 600 }), (w, l, more, cut) => {
        const { squares } = countBolt({ ...bolt, width: w, length: l }, cut);
        expect(
          countBolt({ ...bolt, width: w + more, length: l }, cut).squares,
        ).toBeGreaterThanOrEqual(squares);
        expect(
          countBolt({ ...bolt, width: w, length: l + more }, cut).squares,
        ).toBeGreaterThanOrEqual(squares);
      }),
    );
  });
});
