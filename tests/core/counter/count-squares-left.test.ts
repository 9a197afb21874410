import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { askBolt } from '#core/counter/ask-bolt.ts';
import { countSquaresLeft } from '#core/counter/count-squares-left.ts';
import { drawnNeed } from '../../support/counter-needs.ts';

/** By laying squares out one by one, with no division: an oracle for whole strips. */
function layOut(width: number, length: number, cut: number): number {
  let count = 0;
  for (let down = cut; down <= length + 1e-6; down += cut) {
    for (let across = cut; across <= width + 1e-6; across += cut) count += 1;
  }
  return count;
}

describe('countSquaresLeft', () => {
  // 1/2 yd of 44 in cloth gives eight 10-in squares at most: four across 43 in, and one strip of 18 in.
  test('countSquaresLeft(10 in, half a yard of 44 in) is 4', () => {
    const roll = { width: 0, selvage: 12.7, prewash: { length: 0, width: 0 } };
    const need = { cut: 254, roll, squaring: 25.4 };
    expect(countSquaresLeft(need, { width: 44 * 25.4, length: 457.2 })).toBe(4);
  });

  test('countSquaresLeft counts as many as are laid out one by one', () => {
    fc.assert(
      fc.property(drawnNeed, fc.integer({ min: 1, max: 40 }), (need, eighths) => {
        const { roll, cut, squaring } = need;
        const length = eighths * 114.3;
        const usable = roll.width * (1 - roll.prewash.width) - 2 * roll.selvage;
        const laid = layOut(usable, length * (1 - roll.prewash.length) - squaring, cut);
        expect(countSquaresLeft(need, { width: roll.width, length })).toBe(laid);
      }),
    );
  });

  test('it is enough exactly where no more is asked for than is left', () => {
    fc.assert(
      fc.property(drawnNeed, fc.integer({ min: -3, max: 3 }), (need, steps) => {
        const { width } = need.roll;
        const { length, perStrip } = askBolt(need, width);
        fc.pre(perStrip > 0);
        const left = length + steps * 0.5;
        const isEnough = countSquaresLeft(need, { width, length: left }) >= need.squares;
        expect(isEnough).toBe(steps >= 0);
      }),
    );
  });
});
