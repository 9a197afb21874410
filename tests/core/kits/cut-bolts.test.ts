import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countBolt } from '#core/kits/count-bolt.ts';
import { cutBolts } from '#core/kits/cut-bolts.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const make = (id: string, print: string, length: number, width = 1000) =>
  deepFreeze({
    id,
    role: 'top' as const,
    print,
    width,
    length,
    selvage: 0,
    squaring: 25,
    prewash: { length: 0, width: 0 },
  });

describe('cutBolts', () => {
  test('cutBolts uses up the short end first and begins no bolt it does not need', () => {
    const bolts = [make('long', 'a', 5000), make('end', 'a', 500), make('other', 'b', 5000)];
    const cuts = cutBolts(bolts, 200, [{ role: 'top', print: 'a', squares: 13 }]);
    // The end gives floor(475 / 200) = 2 strips of 5; the long bolt the other 3 squares, in one strip.
    expect(cuts.map(({ cut, used, over, taken, left }) => [cut, used, over, taken, left])).toEqual([
      [1, 3, 2, 225, 4775],
      [2, 10, 0, 425, 75],
      [0, 0, 0, 0, 5000],
    ]);
  });

  test('cutBolts reckons cloth as it lies on the bolt, before a prewash', () => {
    const bolt = { ...make('a', 'a', 5000), prewash: { length: 0.05, width: 0 } };
    const [cut] = cutBolts([bolt], 200, [{ role: 'top', print: 'a', squares: 10 }]);
    expect(cut?.taken).toBeCloseTo(425 / 0.95, 9);
  });

  test('cutBolts conserves: squares asked are squares used, cloth taken and left is the bolt', () => {
    const bolt = fc.tuple(fc.constantFrom('a', 'b'), fc.integer({ min: 100, max: 3000 }));
    fc.assert(
      fc.property(fc.array(bolt, { minLength: 1, maxLength: 6 }), fc.nat(), (rows, part) => {
        const bolts = rows.map(([print, length], at) => make(`${at}`, print, length));
        const needs = ['a', 'b'].map((print) => {
          const own = bolts.filter((one) => one.print === print);
          const all = own.reduce((sum, one) => sum + countBolt(one, 180).squares, 0);
          return { role: 'top' as const, print, squares: part % (all + 1) };
        });
        const cuts = cutBolts(bolts, 180, needs);
        for (const { print, squares } of needs) {
          const own = cuts.filter((cut) => cut.bolt.print === print);
          expect(own.reduce((sum, { used }) => sum + used, 0)).toBe(squares);
          expect(own.filter(({ over }) => over > 0).length).toBeLessThanOrEqual(1);
        }
        for (const cut of cuts) {
          expect(cut.cut).toBeLessThanOrEqual(cut.strips);
          expect(cut.used + cut.over).toBe(cut.cut * cut.perStrip);
          expect(cut.taken + cut.left).toBeCloseTo(cut.bolt.length, 6);
        }
      }),
    );
  });
});
