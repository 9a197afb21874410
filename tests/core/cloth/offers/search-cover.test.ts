import { describe, expect, test } from 'vitest';
import { writeProgramme } from '#core/cloth/offers/cover-programme.ts';
import { searchCover } from '#core/cloth/offers/search-cover.ts';
import { coverByHand } from '../../../support/covers.ts';

function search(target: number, steps = 1e6) {
  const cover = coverByHand(false);
  const fillings = cover.sheets.flatMap((own, sheet) =>
    own.fillings.map((filling) => ({ sheet, filling })),
  );
  const programme = writeProgramme(cover, { fillings, patterns: [] });
  return searchCover(cover, programme, { target, apart: 12, bound: 0, budget: { steps } });
}

describe('searchCover', () => {
  test('searchCover(three sizes by hand, all sheets) buys three packs and cuts three sheets', () => {
    const { found, isComplete } = search(100);
    expect(isComplete).toBe(true);
    expect(found?.cost).toBe(36);
    expect(found?.times[0]).toBe(3);
    const cut = found?.programme.fillings.reduce(
      (sum, _, at) => sum + (found.times[1 + at] ?? 0),
      0,
    );
    expect(cut).toBeLessThanOrEqual(3);
  });

  test('searchCover finds nothing cheaper than the cheapest, and says when it did not look everywhere', () => {
    expect(search(35)).toEqual({ isComplete: true });
    expect(search(100, 3)).toEqual({ isComplete: false });
  });
});
