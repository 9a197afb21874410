import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { settleDictionary } from '#core/cloth/strips/dictionary.ts';
import { startProgramme } from '#core/cloth/strips/start-programme.ts';
import { programmes } from '../../../support/programmes.ts';

describe('settleDictionary', () => {
  test('settleDictionary(the cheaper of two ways to give 10) takes it', () => {
    const columns = [
      { cost: 4, gives: [2] },
      { cost: 9, gives: [5] },
    ];
    const dictionary = startProgramme(columns, [10]);
    expect(settleDictionary(dictionary, 100, { steps: 100 })).toBe(true);
    expect(dictionary.cost).toBeCloseTo(18, 9);
    expect([...dictionary.basic]).toEqual([1]);
    expect([...dictionary.amounts]).toEqual([2]);
  });

  test('settleDictionary stops where the cost is above the most, nothing can help, or steps end', () => {
    const columns = [{ cost: 4, gives: [2] }];
    expect(settleDictionary(startProgramme(columns, [10]), 19, { steps: 100 })).toBe(false);
    expect(settleDictionary(startProgramme(columns, [10]), 20, { steps: 100 })).toBe(true);
    const none = startProgramme([{ cost: 1, gives: [-1] }], [1]);
    expect(settleDictionary(none, Number.POSITIVE_INFINITY, { steps: 100 })).toBe(false);
    const budget = { steps: 1 };
    expect(settleDictionary(startProgramme(columns, [10]), 100, budget)).toBe(false);
    expect(budget.steps).toBeLessThanOrEqual(0);
  });

  test('settleDictionary ends with no amount and no cost below 0, and every need met', () => {
    fc.assert(
      fc.property(programmes, ({ columns, needs }) => {
        const dictionary = startProgramme(columns, needs);
        settleDictionary(dictionary, Number.POSITIVE_INFINITY, { steps: 1e5 });
        expect(Math.min(...dictionary.amounts)).toBeGreaterThan(-1e-6);
        expect(Math.min(...dictionary.costs)).toBeGreaterThan(-1e-6);
        const taken = columns.map(() => 0);
        for (const [row, name] of dictionary.basic.entries()) {
          if (name < columns.length) taken[name] = dictionary.amounts[row] ?? 0;
        }
        for (const [row, need] of needs.entries()) {
          const given = columns.reduce(
            (sum, { gives }, name) => sum + (gives[row] ?? 0) * (taken[name] ?? 0),
            0,
          );
          expect(given).toBeGreaterThan(need - 1e-6);
        }
      }),
    );
  });
});
