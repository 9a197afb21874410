import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSides } from '#core/wish/read-sides.ts';

describe('readSides', () => {
  test('readSides finds both sides in every way of writing them', () => {
    const sides = fc.integer({ min: 1, max: 999 });
    fc.assert(
      fc.property(sides, sides, (width, height) => {
        for (const words of [
          `${width}x${height}`,
          `${width} by ${height} inches`,
          `${width}in X ${height}in`,
          `${width}" × ${height}"`,
          `about ${width} inches by about ${height} inches`,
          `${width} (w) x ${height} (h)`,
          `${height} tall by ${width} wide`,
          `a quilt of ${width} * ${height}.`,
        ]) {
          expect([words, readSides(words, 'in')?.target]).toEqual([words, { width, height }]);
        }
      }),
      { numRuns: 20 },
    );
  });

  test('readSides lends a unit that was said once', () => {
    expect(readSides('60 inches by 80', 'cm')).toMatchObject({
      unit: 'in',
      target: { width: 60, height: 80 },
    });
    expect(readSides('2 by 3 m', 'in')).toMatchObject({
      unit: 'cm',
      target: { width: '2 m', height: '3 m' },
    });
  });

  test('readSides takes neither the size of a block nor a list for a quilt', () => {
    for (const words of ['8 x 8 inch blocks', '5 by 5 squares', '50 x 60 x 2', '10 x 10 precuts']) {
      expect(readSides(words, 'in')).toBeUndefined();
    }
  });

  test.each([
    ['eine Decke, 100 mal 130 cm'],
    ['una manta de 100 por 130 cm'],
    ['un plaid de 100 par 130 cm'],
    ['un plaid, 100 cm sur 130 cm'],
  ])('readSides reads %j, as it is said in another language', (words) => {
    expect(readSides(words, 'in')).toMatchObject({
      unit: 'cm',
      target: { width: 100, height: 130 },
    });
  });

  test.each([['4 mal 5 Blöcke'], ['4 por 5 bloques'], ['4 par 5 blocs'], ['4 x 5 Blöcke']])(
    'readSides takes no blocks for a size: %j',
    (words) => {
      expect(readSides(words, 'cm')).toBeUndefined();
    },
  );

  test('readSides takes no grid and no range for a quilt', () => {
    for (const words of ['150 by 3 grid', 'grid of 6 by 7', '30-40 by 50', '40 by 50-60']) {
      expect(readSides(words, 'in')).toBeUndefined();
    }
  });

  test('readSides takes a size as sewn where that is said of the size, not of the work', () => {
    for (const words of ['40 by 50, sewn', '40 x 50 inches sewn.', 'sewn size 40 by 50']) {
      expect([words, readSides(words, 'in')?.target.at]).toEqual([words, 'sewn']);
    }
    for (const words of ['40 by 50, hand sewn', 'sewn by me, 40 by 50', '40 by 50 machine-sewn']) {
      expect([words, readSides(words, 'in')?.target.at]).toEqual([words, undefined]);
    }
  });

  test('readSides takes “and” and a comma only where both sides are told apart', () => {
    expect(readSides('40 and 50 inches', 'in')).toBeUndefined();
    expect(readSides('40 wide, 50 long', 'in')?.target).toEqual({ width: 40, height: 50 });
  });
});
