import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listLevels } from '#core/cloth/strips/list-levels.ts';
import { BY_HAND, FAMILIES, stripCases } from '../../../support/strip-cases.ts';

describe('listLevels', () => {
  test('listLevels(three sizes by hand) has the heights that let a piece lie narrower', () => {
    expect(listLevels(BY_HAND.kinds, 100)).toEqual([
      {
        height: 10,
        widths: [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 20],
        turned: [false, false, false],
      },
      { height: 20, widths: [30, Number.POSITIVE_INFINITY, 20], turned: [false, false, false] },
      { height: 25, widths: [30, 40, 20], turned: [false, false, false] },
      { height: 40, widths: [30, 25, 20], turned: [false, true, false] },
    ]);
  });

  test('listLevels leaves out a way wider than the roll, and a piece too wide both ways', () => {
    const long = { across: 120, along: 30, count: 1, canTurn: true };
    expect(listLevels([long], 100)).toEqual([{ height: 120, widths: [30], turned: [true] }]);
    expect(listLevels([{ ...long, canTurn: false }], 100)).toEqual([]);
  });

  test('listLevels never gives a square as turned', () => {
    const square = { across: 50, along: 50, count: 1, canTurn: true };
    expect(listLevels([square], 100)[0]?.turned).toEqual([false]);
  });

  test('listLevels rises, and a taller strip never takes more width for a piece', () => {
    fc.assert(
      fc.property(stripCases(FAMILIES.eighths, { min: 1, max: 8 }), ({ kinds, usable }) => {
        const levels = listLevels(kinds, usable);
        for (const [at, level] of levels.entries()) {
          const below = levels[at - 1];
          if (below === undefined) continue;
          expect(level.height).toBeGreaterThan(below.height);
          const widths = level.widths.map((width, kind) => [width, below.widths[kind] ?? 0]);
          expect(widths.every(([own = 0, lower = 0]) => own <= lower)).toBe(true);
          expect(widths.some(([own = 0, lower = 0]) => own < lower)).toBe(true);
        }
      }),
    );
  });
});
