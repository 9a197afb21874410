import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { searchWhole, type WholeSearch } from '#core/cloth/strips/search-whole.ts';
import { startProgramme } from '#core/cloth/strips/start-programme.ts';
import { leastByTrying, programmes, type SmallProgramme } from '../../../support/programmes.ts';

function search({ columns, needs }: SmallProgramme, own: Partial<WholeSearch> = {}) {
  return searchWhole(startProgramme(columns, needs), {
    names: columns.length,
    sets: [],
    target: 1000,
    step: 1,
    bound: 0,
    budget: { steps: 1e6 },
    measure: (times) => columns.reduce((sum, { cost }, name) => sum + cost * (times[name] ?? 0), 0),
    ...own,
  });
}

const costOf = ({ columns }: SmallProgramme, times: Float64Array | undefined) =>
  columns.reduce((sum, { cost }, name) => sum + cost * (times?.[name] ?? 0), 0);

describe('searchWhole', () => {
  test('searchWhole finds the least cost that trying all finds', () => {
    fc.assert(
      fc.property(programmes, (one) => {
        const { times, isComplete } = search(one);
        expect(isComplete).toBe(true);
        expect(costOf(one, times)).toBe(leastByTrying(one, 12));
        for (const [row, need] of one.needs.entries()) {
          const given = one.columns.reduce(
            (sum, { gives }, name) => sum + (gives[row] ?? 0) * (times?.[name] ?? 0),
            0,
          );
          expect(given).toBeGreaterThanOrEqual(need);
        }
      }),
    );
  });

  test('searchWhole finds nothing below the least, and says that it looked everywhere', () => {
    fc.assert(
      fc.property(programmes, (one) => {
        const least = leastByTrying(one, 12);
        expect(search(one, { target: least - 1 })).toEqual({ isComplete: true });
      }),
    );
  });

  test('searchWhole out of steps does not claim to be complete', () => {
    const one = { columns: [{ cost: 7, gives: [3] }], needs: [10] };
    expect(search(one, { budget: { steps: 2 } })).toEqual({ isComplete: false });
  });

  test('searchWhole does not claim to be complete where a solution does not hold', () => {
    const one = { columns: [{ cost: 7, gives: [3] }], needs: [10] };
    expect(search(one, { measure: () => undefined })).toEqual({ isComplete: false });
  });
});
