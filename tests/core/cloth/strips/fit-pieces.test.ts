import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitPieces } from '#core/cloth/strips/fit-pieces.ts';
import { leastStrips } from '#core/cloth/strips/least-strips.ts';
import { BY_HAND, FAMILIES, stripCases } from '../../../support/strip-cases.ts';

describe('fitPieces', () => {
  test('fitPieces(three sizes by hand) puts the most cloth that each length holds into pieces', () => {
    const { kinds, usable } = BY_HAND;
    const place = (room: number) => fitPieces(kinds, { usable, room });
    expect(place(55)).toEqual([3, 2, 5]);
    expect(place(54)).toEqual([3, 2, 1]);
    expect(place(25)).toEqual([0, 2, 1]);
    expect(place(10)).toEqual([0, 0, 5]);
    expect(place(9)).toEqual([0, 0, 0]);
    expect(place(-1)).toEqual([0, 0, 0]);
  });

  test('fitPieces passes over sizes of which none is wanted', () => {
    const none = { across: 500, along: 500, count: 0, canTurn: false };
    expect(fitPieces([none, ...BY_HAND.kinds], { usable: 100, room: 55 })).toEqual([0, 3, 2, 5]);
    expect(fitPieces([none], { usable: 100, room: 55 })).toEqual([0]);
  });

  test('fitPieces is all where the room is enough, and otherwise can be cut within it', () => {
    fc.assert(
      fc.property(
        stripCases(FAMILIES.eighths, { min: 2, max: 6 }),
        fc.integer({ min: 10, max: 120 }),
        ({ kinds, usable }, percent) => {
          const { length, optimal } = leastStrips(kinds, usable);
          const room = (length * percent) / 100;
          const placed = fitPieces(kinds, { usable, room });
          const wanted = kinds
            .map((kind, at) => ({ ...kind, count: placed[at] ?? 0 }))
            .filter(({ count }) => count > 0);
          expect(placed.every((count, at) => count <= (kinds[at]?.count ?? 0))).toBe(true);
          if (wanted.length > 0) {
            expect(leastStrips(wanted, usable).bound).toBeLessThanOrEqual(room + 1e-3);
          }
          if (percent < 100 && optimal) expect(placed).not.toEqual(kinds.map(({ count }) => count));
        },
      ),
      { numRuns: 40 },
    );
  });
});
