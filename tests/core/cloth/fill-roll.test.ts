import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillRoll, mostFromLength, type RollOrder } from '#core/cloth/fill-roll.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const NONE = { length: 0, width: 0 };
const PIECE = deepFreeze({
  roll: { width: 1000, selvage: 0, prewash: NONE },
  width: 300,
  length: 500,
  directional: false,
  squaring: 0,
});
const order = fc
  .record({
    roll: fc.record({
      width: fc.integer({ min: 620, max: 1600 }),
      selvage: fc.integer({ min: 0, max: 10 }),
      prewash: fc.record({
        length: fc.integer({ min: 0, max: 9 }).map((percent) => percent / 100),
        width: fc.constant(0),
      }),
    }),
    width: fc.integer({ min: 40, max: 600 }),
    length: fc.integer({ min: 40, max: 600 }),
    count: fc.integer({ min: 1, max: 60 }),
    directional: fc.boolean(),
    squaring: fc.integer({ min: 0, max: 50 }),
  })
  .map(deepFreeze);

function countPieces(one: RollOrder): number {
  return fillRoll(one).kinds.reduce((sum, kind) => sum + kind.strips * kind.perStrip, 0);
}

describe('fillRoll', () => {
  test('fillRoll(300 by 500) mixes both ways where that is least', () => {
    // Upright 3 a strip of 500, turned 2 a strip of 300: five pieces are 3 + 2.
    const fill = fillRoll({ ...PIECE, width: 300, length: 500, count: 5 });
    expect(fill.length).toBe(800);
    expect(fill.kinds).toEqual([
      { strips: 1, length: 500, perStrip: 3, turned: false, left: 100 },
      { strips: 1, length: 300, perStrip: 2, turned: true, left: 0 },
    ]);
  });

  test('fillRoll of a directional piece never turns it, even where that costs more', () => {
    const upright = { ...PIECE, width: 300, length: 500, count: 2 };
    expect(fillRoll(upright).length).toBe(300);
    expect(fillRoll({ ...upright, directional: true }).length).toBe(500);
  });

  test('fillRoll of a piece wider than the roll turns it, and takes nothing more', () => {
    const fill = fillRoll({ ...PIECE, width: 1200, length: 300, count: 4 });
    expect(fill.length).toBe(2400);
    expect(fill.kinds).toEqual([{ strips: 2, length: 1200, perStrip: 3, turned: true, left: 100 }]);
  });

  test('fillRoll of a square does not turn anything', () => {
    fc.assert(
      fc.property(order, (one) => {
        const { kinds } = fillRoll({ ...one, length: one.width });
        expect(kinds.some((kind) => kind.turned)).toBe(false);
      }),
    );
  });

  test('fillRoll gives no kinds where the piece fits neither way', () => {
    const fill = fillRoll({ ...PIECE, width: 1100, length: 1200, count: 3 });
    expect(fill).toEqual({ usableWidth: 1000, length: 0, kinds: [] });
  });

  test('fillRoll holds every piece within the usable width', () => {
    fc.assert(
      fc.property(order, (one) => {
        const fill = fillRoll(one);
        expect(countPieces(one)).toBeGreaterThanOrEqual(one.count);
        for (const kind of fill.kinds) {
          const across = kind.turned ? one.length : one.width;
          expect(kind.perStrip * across + kind.left).toBeCloseTo(fill.usableWidth, 6);
          expect(kind.left).toBeGreaterThan(-0.001);
          expect(kind.length).toBe(kind.turned ? one.width : one.length);
        }
      }),
    );
  });

  test('fillRoll of one piece fewer never costs more', () => {
    fc.assert(
      fc.property(order, (one) => {
        const fewer = fillRoll({ ...one, count: Math.max(1, one.count - 1) });
        expect(fewer.length).toBeLessThanOrEqual(fillRoll(one).length);
      }),
    );
  });

  test('fillRoll from a wider roll never needs more', () => {
    fc.assert(
      fc.property(order, fc.integer({ min: 1, max: 400 }), (one, wider) => {
        const wide = { ...one.roll, width: one.roll.width + wider };
        expect(fillRoll({ ...one, roll: wide }).length).toBeLessThanOrEqual(fillRoll(one).length);
      }),
    );
  });

  test('fillRoll of pieces that may be turned never costs more than of pieces that may not', () => {
    fc.assert(
      fc.property(order, (one) => {
        const free = fillRoll({ ...one, directional: false }).length;
        expect(free).toBeLessThanOrEqual(fillRoll({ ...one, directional: true }).length);
      }),
    );
  });

  test('fillRoll of turned pieces that may be turned is the same length', () => {
    fc.assert(
      fc.property(order, (one) => {
        const free = { ...one, directional: false };
        const turned = { ...free, width: one.length, length: one.width };
        expect(fillRoll(turned).length).toBeCloseTo(fillRoll(free).length, 6);
      }),
    );
  });
});

describe('mostFromLength', () => {
  test('mostFromLength(800 mm) holds the five pieces that need 800 mm, 799 mm four', () => {
    expect(mostFromLength(PIECE, 800)).toBe(5);
    expect(mostFromLength(PIECE, 799)).toBe(4);
  });

  test('mostFromLength of less than the squaring is nothing', () => {
    expect(mostFromLength({ ...PIECE, squaring: 25 }, 24)).toBe(0);
  });

  test('mostFromLength of what fillRoll asks for holds all; one piece more needs more cloth', () => {
    fc.assert(
      fc.property(order, (one) => {
        const { length } = fillRoll(one);
        const most = mostFromLength(one, length);
        expect(most).toBeGreaterThanOrEqual(one.count);
        expect(fillRoll({ ...one, count: most }).length).toBeLessThanOrEqual(length + 1e-3);
        expect(fillRoll({ ...one, count: most + 1 }).length).toBeGreaterThan(length);
      }),
    );
  });

  test('mostFromLength never falls as the cloth gets longer', () => {
    fc.assert(
      fc.property(order, fc.integer({ min: 0, max: 5000 }), (one, length) => {
        expect(mostFromLength(one, length + 10)).toBeGreaterThanOrEqual(
          mostFromLength(one, length),
        );
      }),
    );
  });
});
