import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listFillings } from '#core/cloth/offers/list-fillings.ts';
import { leastStrips } from '#core/cloth/strips/least-strips.ts';
import { BY_HAND, FAMILIES, stripCases } from '../../../support/strip-cases.ts';

const SHEET = { width: 500, length: 450 } as const;

describe('listFillings', () => {
  test('listFillings(a sheet of 60 by 45, three sizes by hand) lists what no other holds', () => {
    const { fillings, isComplete } = listFillings(BY_HAND.kinds, { width: 60, length: 45 });
    expect(isComplete).toBe(true);
    // In strips of 25 and 20; 40; 25, 10 and 10; 20 and 20; 20, 10 and 10.
    expect(fillings.map(({ counts }) => counts).toSorted()).toEqual([
      [0, 1, 5],
      [0, 2, 0],
      [1, 1, 2],
      [2, 0, 5],
      [2, 1, 1],
      [3, 0, 1],
    ]);
  });

  test('listFillings of a pre-cut square gives one piece of its size or smaller', () => {
    const kinds = [250, 200, 260].map((side) => ({
      across: side,
      along: side,
      count: 4,
      canTurn: false,
    }));
    const { fillings } = listFillings(kinds, { width: 250, length: 250 });
    expect(fillings.map(({ counts }) => counts).toSorted()).toEqual([
      [0, 1, 0],
      [1, 0, 0],
    ]);
  });

  test('listFillings can be cut: the least length of each is within the sheet', () => {
    const cases = stripCases({ ...FAMILIES.centimetres, least: 12 }, { min: 1, max: 3 });
    fc.assert(
      fc.property(cases, ({ kinds }) => {
        const { fillings } = listFillings(kinds, SHEET);
        for (const { counts } of fillings.slice(0, 20)) {
          const wanted = kinds
            .map((kind, at) => ({ ...kind, count: counts[at] ?? 0 }))
            .filter(({ count }) => count > 0);
          if (wanted.length === 0) continue;
          expect(leastStrips(wanted, SHEET.width).bound).toBeLessThanOrEqual(SHEET.length + 1e-3);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('listFillings of many small pieces gives some, and says that some are missing', () => {
    const kinds = Array.from({ length: 12 }, (_, at) => ({
      across: 51 + at,
      along: 61 + 2 * at,
      count: 20,
      canTurn: true,
    }));
    const { fillings, isComplete } = listFillings(kinds, { width: 1000, length: 900 });
    expect(isComplete).toBe(false);
    expect(fillings.length).toBeGreaterThan(0);
  });

  test('listFillings of pieces larger than the sheet is empty and complete', () => {
    const kinds = [{ across: 900, along: 900, count: 1, canTurn: true }];
    expect(listFillings(kinds, SHEET)).toEqual({ levels: [], fillings: [], isComplete: true });
  });
});
