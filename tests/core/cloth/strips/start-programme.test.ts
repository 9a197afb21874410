import fc from 'fast-check';
import loadHighs from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { settleDictionary } from '#core/cloth/strips/dictionary.ts';
import { readPrices, startProgramme } from '#core/cloth/strips/start-programme.ts';
import { programmes } from '../../../support/programmes.ts';
import type { Highs } from '../../../support/solve-model.ts';

let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

describe('startProgramme', () => {
  test('startProgramme starts with nothing taken and every need unmet', () => {
    const dictionary = startProgramme([{ cost: 3, gives: [2, -1] }], [4, -5]);
    expect(dictionary).toEqual({
      basic: Int32Array.of(1, 2),
      free: Int32Array.of(0),
      amounts: Float64Array.of(-4, 5),
      table: Float64Array.of(-2, 1),
      costs: Float64Array.of(3),
      cost: 0,
    });
  });

  test('startProgramme settled costs what HiGHS finds in fractions', () => {
    fc.assert(
      fc.property(programmes, ({ columns, needs }) => {
        const dictionary = startProgramme(columns, needs);
        expect(settleDictionary(dictionary, Number.POSITIVE_INFINITY, { steps: 1e5 })).toBe(true);
        const sum = (terms: readonly number[]) =>
          terms.map((term, name) => `${term < 0 ? '-' : '+'} ${Math.abs(term)} x${name}`).join(' ');
        const rows = needs.map(
          (need, row) => `${sum(columns.map(({ gives }) => gives[row] ?? 0))} >= ${need}`,
        );
        const costs = sum(columns.map(({ cost }) => cost));
        const { ObjectiveValue } = highs.solve(
          ['Minimize', costs, 'Subject To', ...rows, 'End'].join('\n'),
        );
        expect(dictionary.cost).toBeCloseTo(ObjectiveValue, 6);
      }),
    );
  });
});

describe('readPrices', () => {
  test('readPrices of the needs come to the least cost, and no variable is worth more than it costs', () => {
    fc.assert(
      fc.property(programmes, ({ columns, needs }) => {
        const dictionary = startProgramme(columns, needs);
        settleDictionary(dictionary, Number.POSITIVE_INFINITY, { steps: 1e5 });
        const prices = readPrices(dictionary, { names: columns.length, needs: needs.length });
        const worth = (amounts: readonly number[]) =>
          amounts.reduce((sum, amount, row) => sum + amount * (prices[row] ?? 0), 0);
        expect(worth(needs)).toBeCloseTo(dictionary.cost, 6);
        for (const { cost, gives } of columns)
          expect(worth(gives)).toBeLessThanOrEqual(cost + 1e-6);
      }),
    );
  });
});
