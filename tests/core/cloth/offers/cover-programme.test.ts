import { describe, expect, test } from 'vitest';
import { listCoverSets, writeProgramme } from '#core/cloth/offers/cover-programme.ts';
import { coverByHand } from '../../../support/covers.ts';

const PATTERN = { level: 1, counts: [3, 0, 0] };

function programmeOf(isOffRoll: boolean) {
  const cover = coverByHand(isOffRoll);
  const [filling] = cover.sheets[0]?.fillings ?? [];
  const fillings = filling === undefined ? [] : [{ sheet: 0, filling }];
  return {
    cover,
    filling,
    written: writeProgramme(cover, { fillings, patterns: isOffRoll ? [PATTERN] : [] }),
  };
}

describe('writeProgramme', () => {
  test('writeProgramme off a roll: steps, packs, fillings and strips against pieces, packs, sheets, length', () => {
    const { filling, written } = programmeOf(true);
    expect(written.needs).toEqual([3, 2, 5, -3, 0, 5, 1]);
    expect(written.columns).toEqual([
      { cost: 10, gives: [0, 0, 0, 0, 0, 30, 1] },
      { cost: 12, gives: [0, 0, 0, -1, 1, 0, 0] },
      { cost: 0, gives: [...(filling?.counts ?? []), 0, -1, 0, 0] },
      { cost: 0, gives: [3, 0, 0, 0, 0, -20, 0] },
    ]);
  });

  test('writeProgramme without a roll needs no length; what may be left out costs', () => {
    const { cover, written } = programmeOf(false);
    expect(written.needs).toEqual([3, 2, 5, -3, 0]);
    const left = writeProgramme({ ...cover, leftOut: [7, 8, 9] }, { fillings: [], patterns: [] });
    expect(left.columns.slice(1)).toEqual([
      { cost: 7, gives: [1, 0, 0, 0, 0] },
      { cost: 8, gives: [0, 1, 0, 0, 0] },
      { cost: 9, gives: [0, 0, 1, 0, 0] },
    ]);
  });
});

describe('listCoverSets', () => {
  test('listCoverSets asks for whole steps and packs first, then for strips by height', () => {
    const { cover, written } = programmeOf(true);
    const [bought = [], levels = []] = listCoverSets(cover, written);
    expect(bought.map((members) => [...members])).toEqual([
      [1, 0, 0, 0],
      [0, 1, 0, 0],
    ]);
    expect(levels.map((members) => members[3])).toEqual([1, 1, 0, 0]);
  });
});
