import { describe, expect, test } from 'vitest';
import { listAlone } from '#core/cloth/strips/list-alone.ts';
import { listLevels } from '#core/cloth/strips/list-levels.ts';

describe('listAlone', () => {
  test('listAlone gives each kind the lowest strip upright, and turned where that is narrower', () => {
    const kinds = [
      { across: 30, along: 20, count: 9, canTurn: true },
      { across: 40, along: 20, count: 1, canTurn: false },
      { across: 50, along: 45, count: 7, canTurn: false },
    ];
    const levels = listLevels(kinds, 100);
    const problem = { usable: 100, levels, demand: kinds.map(({ count }) => count) };
    expect(listAlone(problem)).toEqual([
      { level: 0, counts: [3, 0, 0] },
      { level: 0, counts: [0, 1, 0] },
      { level: 1, counts: [5, 0, 0] },
      { level: 2, counts: [0, 0, 2] },
    ]);
  });

  test('listAlone leaves out kinds that are not wanted or too wide', () => {
    const levels = [{ height: 20, widths: [30, 130], turned: [false, false] }];
    expect(listAlone({ usable: 100, levels, demand: [0, 4] })).toEqual([]);
  });
});
