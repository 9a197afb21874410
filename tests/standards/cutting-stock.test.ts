/**
 * Published one-dimensional cutting-stock instances, stated as strips: every piece as long as the rest,
 * so that the least length counts the strips.
 * - 5600 mm, thirteen widths: "Cutting stock problem" of Wikipedia, data as in the example of Google's
 *   OR-tools, which gives 73 as best known; seen. Proven least by a complete pattern model.
 * - 100 wide, four widths: Chvátal, Linear Programming (1983), from memory; data as in GAMS's cutstock
 *   model, seen. Linear relaxation 452.25, least 453; by area alone no more than 416 can be proven.
 * - By area 72.7071 of 73 and 415.24 of 453 rolls: arithmetic.
 */
import { describe, expect, test } from 'vitest';
import { leastStrips } from '#core/cloth/strips/least-strips.ts';
import { listLevels } from '#core/cloth/strips/list-levels.ts';
import { solveRelaxation } from '#core/cloth/strips/solve-relaxation.ts';

const WIKIPEDIA = {
  usable: 5600,
  rolls: [
    [1380, 22],
    [1520, 25],
    [1560, 12],
    [1710, 14],
    [1820, 18],
    [1880, 18],
    [1930, 20],
    [2000, 10],
    [2050, 12],
    [2100, 14],
    [2140, 16],
    [2150, 18],
    [2200, 20],
  ],
} as const;
const CHVATAL = {
  usable: 100,
  rolls: [
    [45, 97],
    [36, 610],
    [31, 395],
    [14, 211],
  ],
} as const;

function kindsOf({ rolls }: { readonly rolls: readonly (readonly [number, number])[] }) {
  return rolls.map(([across, count]) => ({ across, along: 1, count, canTurn: false }));
}

describe('leastStrips', () => {
  test('leastStrips(the 13 widths of the encyclopaedia) is 73 rolls, proven', () => {
    const { length, bound, optimal } = leastStrips(kindsOf(WIKIPEDIA), WIKIPEDIA.usable);
    expect({ length, bound, optimal }).toEqual({ length: 73, bound: 73, optimal: true });
  });

  test('leastStrips(the 4 widths of the textbook) is 453 rolls, proven, where area proves 416', () => {
    const { length, bound, optimal } = leastStrips(kindsOf(CHVATAL), CHVATAL.usable);
    expect({ length, bound, optimal }).toEqual({ length: 453, bound: 453, optimal: true });
  });
});

describe('solveRelaxation', () => {
  test.each([
    ['the textbook', CHVATAL, 452.25],
    ['the encyclopaedia', WIKIPEDIA, 72.916667],
  ])('solveRelaxation(%s) has the published value', (_, instance, value) => {
    const kinds = kindsOf(instance);
    const levels = listLevels(kinds, instance.usable);
    const demand = kinds.map((kind) => kind.count);
    const { bound } = solveRelaxation({ usable: instance.usable, levels, demand }, { steps: 1e6 });
    expect(bound).toBeCloseTo(value, 6);
  });
});
