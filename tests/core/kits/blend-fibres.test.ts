import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blendFibres } from '#core/kits/blend-fibres.ts';

const only = (fibre: string) => [{ fibre, percent: 100 }];

describe('blendFibres', () => {
  test('blendFibres goes by mass, the largest first (16 CFR 303, from memory)', () => {
    // 140 g of cotton and 260 g of polyester: 35 and 65 %.
    const cloths = [
      { mass: 140, fibres: only('cotton') },
      { mass: 260, fibres: only('polyester') },
    ];
    expect(blendFibres(cloths)).toEqual([
      { fibre: 'polyester', percent: 65 },
      { fibre: 'cotton', percent: 35 },
    ]);
  });

  test('blendFibres adds one fibre of several cloths', () => {
    const blend = [
      { fibre: 'linen', percent: 55 },
      { fibre: 'cotton', percent: 45 },
    ];
    const cloths = [
      { mass: 180, fibres: blend },
      { mass: 170, fibres: only('cotton') },
    ];
    // Cotton 81 + 170 = 251 of 350, linen 99.
    expect(blendFibres(cloths)).toEqual([
      { fibre: 'cotton', percent: 72 },
      { fibre: 'linen', percent: 28 },
    ]);
  });

  test('blendFibres names no fibre under 5 % (16 CFR 303.3)', () => {
    const cloths = [
      { mass: 92, fibres: only('cotton') },
      { mass: 4, fibres: only('elastane') },
      { mass: 4, fibres: only('silk') },
    ];
    expect(blendFibres(cloths)).toEqual([
      { fibre: 'cotton', percent: 92 },
      { fibre: 'other fibre', percent: 8 },
    ]);
    const whole = [
      { mass: 95, fibres: only('cotton') },
      { mass: 5, fibres: only('silk') },
    ];
    expect(blendFibres(whole).at(-1)).toEqual({ fibre: 'silk', percent: 5 });
  });

  test('blendFibres: thirds come to 34, 33 and 33, ties by name', () => {
    const cloths = ['wool', 'cotton', 'linen'].map((fibre) => ({ mass: 1, fibres: only(fibre) }));
    expect(blendFibres(cloths)).toEqual([
      { fibre: 'cotton', percent: 34 },
      { fibre: 'linen', percent: 33 },
      { fibre: 'wool', percent: 33 },
    ]);
  });

  test('blendFibres sums to 100 in whole percent, largest first, other fibre last', () => {
    const fibre = fc.constantFrom('cotton', 'linen', 'polyester', 'wool', 'silk', 'other fibre');
    const cloth = fc.record({
      mass: fc.integer({ min: 1, max: 400 }),
      fibres: fc
        .tuple(fibre, fibre, fc.integer({ min: 1, max: 99 }))
        .map(([one, other, percent]) => [
          { fibre: one, percent },
          { fibre: other, percent: 100 - percent },
        ]),
    });
    fc.assert(
      fc.property(fc.array(cloth, { minLength: 1, maxLength: 5 }), (cloths) => {
        const fibres = blendFibres(cloths);
        expect(fibres.reduce((sum, { percent }) => sum + percent, 0)).toBe(100);
        for (const { percent } of fibres) expect(Number.isInteger(percent)).toBe(true);
        const named = fibres.filter((row) => row.fibre !== 'other fibre');
        const percents = named.map(({ percent }) => percent);
        expect(percents).toEqual(percents.toSorted((one, other) => other - one));
        expect(fibres.slice(0, named.length)).toEqual(named);
      }),
      { numRuns: 500 },
    );
  });
});
