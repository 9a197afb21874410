import loadHighs from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { relaxCover } from '#core/cloth/offers/relax-cover.ts';
import { fillAlone } from '#core/cloth/strips/best-alone.ts';
import { coverByHand } from '../../../support/covers.ts';
import { listStrips } from '../../../support/pattern-model.ts';
import type { Highs } from '../../../support/solve-model.ts';
import { BY_HAND, problemOf } from '../../../support/strip-cases.ts';

let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

const alone = () => {
  const problem = problemOf(BY_HAND);
  return problem.levels
    .flatMap((_, level) => problem.demand.map((_, kind) => fillAlone(problem, level, kind)))
    .filter(({ counts }) => counts.some((count) => count > 0));
};

describe('relaxCover', () => {
  test('relaxCover off a roll comes to what HiGHS finds with every strip and sheet written down', () => {
    const cover = coverByHand(true);
    const relaxed = relaxCover(cover, alone(), { steps: 1e6 });
    const strips = listStrips(BY_HAND);
    const fillings = cover.sheets[0]?.fillings ?? [];
    const sum = (terms: readonly string[]) => terms.join(' + ');
    const rows = BY_HAND.kinds.map(({ count }, kind) => {
      const onStrips = strips.map(({ counts }, at) => `${counts[kind] ?? 0} s${at}`);
      const onSheets = fillings.map(({ counts }, at) => `${counts[kind] ?? 0} f${at}`);
      return `${sum([...onStrips, ...onSheets])} >= ${count}`;
    });
    const lines = [
      'Minimize',
      '10 R + 12 P',
      'Subject To',
      ...rows,
      `30 R - ${strips.map(({ height }, at) => `${height} s${at}`).join(' - ')} >= 5`,
      `P - ${fillings.map((_, at) => `f${at}`).join(' - ')} >= 0`,
      'Bounds',
      'R >= 1',
      'P <= 3',
      'End',
    ];
    expect(relaxed?.isSolved).toBe(true);
    expect(relaxed?.bound).toBeCloseTo(highs.solve(lines.join('\n')).ObjectiveValue, 6);
  });

  test('relaxCover without enough to buy is nothing', () => {
    const cover = coverByHand(false);
    const one = {
      ...cover,
      sheets: cover.sheets.map(({ offer, fillings }) => ({
        fillings,
        offer: { ...offer, most: 1 },
      })),
    };
    expect(relaxCover(one, [], { steps: 1e6 })).toBeUndefined();
    expect(relaxCover(cover, [], { steps: 1e6 })?.bound).toBeGreaterThan(12);
  });

  test('relaxCover out of steps proves nothing', () => {
    expect(relaxCover(coverByHand(true), alone(), { steps: 2 })).toMatchObject({
      bound: 0,
      isSolved: false,
    });
  });
});
