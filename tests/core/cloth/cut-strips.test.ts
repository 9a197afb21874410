import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutStrips } from '#core/cloth/cut-strips.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const order = fc
  .record({
    roll: fc.record({
      width: fc.integer({ min: 800, max: 2800 }),
      selvage: fc.integer({ min: 0, max: 25 }),
      prewash: fc.record({
        length: fc.integer({ min: 0, max: 10 }).map((percent) => percent / 100),
        width: fc.integer({ min: 0, max: 10 }).map((percent) => percent / 100),
      }),
    }),
    across: fc.integer({ min: 50, max: 600 }),
    along: fc.integer({ min: 50, max: 600 }),
    pieces: fc.integer({ min: 1, max: 300 }),
    squaring: fc.integer({ min: 0, max: 50 }),
  })
  .map(deepFreeze);

describe('cutStrips', () => {
  test('cutStrips(48 of 8 1/2 in from 42 in) takes 12 strips of 4, 103 in with the squaring', () => {
    const plan = cutStrips({
      roll: { width: 1066.8, selvage: 12.7, prewash: { length: 0, width: 0 } },
      across: 215.9,
      along: 215.9,
      pieces: 48,
      squaring: 25.4,
    });
    expect(plan).toMatchObject({ perStrip: 4, strips: 12 });
    expect(plan.length / 25.4).toBeCloseTo(103, 10);
  });

  test('cutStrips of no pieces takes no cloth, not even for squaring', () => {
    const roll = { width: 1000, selvage: 0, prewash: { length: 0, width: 0 } };
    expect(cutStrips({ roll, across: 200, along: 200, pieces: 0, squaring: 25 })).toEqual({
      usableWidth: 1000,
      perStrip: 5,
      strips: 0,
      length: 0,
    });
  });

  test('cutStrips of a piece wider than the roll says so by 0 a strip', () => {
    const roll = { width: 400, selvage: 12, prewash: { length: 0, width: 0 } };
    const plan = cutStrips({ roll, across: 380, along: 380, pieces: 4, squaring: 25 });
    expect(plan).toMatchObject({ perStrip: 0, strips: 0, length: 0 });
  });

  test('cutStrips holds all pieces, and one strip fewer would not', () => {
    fc.assert(
      fc.property(order, (one) => {
        const { perStrip, strips, usableWidth } = cutStrips(one);
        expect(perStrip * strips).toBeGreaterThanOrEqual(one.pieces);
        expect(perStrip * (strips - 1)).toBeLessThan(one.pieces);
        expect(perStrip * one.across).toBeLessThanOrEqual(usableWidth + 1e-4);
      }),
    );
  });

  test('cutStrips of one piece fewer never costs more', () => {
    fc.assert(
      fc.property(order, (one) => {
        const fewer = cutStrips({ ...one, pieces: one.pieces - 1 });
        expect(fewer.length).toBeLessThanOrEqual(cutStrips(one).length);
      }),
    );
  });

  test('cutStrips from a wider roll never needs more', () => {
    fc.assert(
      fc.property(order, fc.integer({ min: 1, max: 500 }), (one, wider) => {
        const roll = { ...one.roll, width: one.roll.width + wider };
        expect(cutStrips({ ...one, roll }).length).toBeLessThanOrEqual(cutStrips(one).length);
      }),
    );
  });

  test('cutStrips leaves, once prewashed, exactly the strips and the squaring', () => {
    fc.assert(
      fc.property(order, (one) => {
        const { length, strips } = cutStrips(one);
        const washed = length * (1 - one.roll.prewash.length);
        expect(washed).toBeCloseTo(strips * one.along + one.squaring, 6);
      }),
    );
  });
});
