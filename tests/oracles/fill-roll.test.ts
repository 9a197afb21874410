/**
 * The least length of roll against a search over every kind of strip, those with pieces lying both
 * ways included: a strip is as tall as its tallest piece, and the cheapest set of strips that holds
 * the pieces is found by dynamic programming over the number of pieces.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillRoll, mostFromLength } from '#core/cloth/fill-roll.ts';

interface Piece {
  readonly width: number;
  readonly length: number;
  readonly directional: boolean;
}

interface Strip {
  readonly pieces: number;
  readonly height: number;
}

/** Every strip there is: some pieces upright, some turned, side by side within the width. */
function listStrips(room: number, { width, length, directional }: Piece): readonly Strip[] {
  const strips: Strip[] = [];
  for (let upright = 0; upright * width <= room; upright += 1) {
    for (let turned = 0; upright * width + turned * length <= room; turned += 1) {
      if (upright + turned === 0 || (directional && turned > 0)) continue;
      const height = Math.max(upright > 0 ? length : 0, turned > 0 ? width : 0);
      strips.push({ pieces: upright + turned, height });
    }
  }
  return strips;
}

function leastLengths(room: number, piece: Piece, count: number): readonly number[] {
  const strips = listStrips(room, piece);
  const least = [0];
  for (let pieces = 1; pieces <= count; pieces += 1) {
    const totals = strips.map(
      (strip) => strip.height + (least[Math.max(0, pieces - strip.pieces)] ?? Number.NaN),
    );
    least.push(Math.min(Number.POSITIVE_INFINITY, ...totals));
  }
  return least;
}

const piece = fc.record({
  width: fc.integer({ min: 7, max: 60 }),
  length: fc.integer({ min: 7, max: 60 }),
  directional: fc.boolean(),
});
const room = fc.integer({ min: 60, max: 160 });

describe('fillRoll', () => {
  test('fillRoll finds the least length over every kind of strip, for 1 to 30 pieces', () => {
    fc.assert(
      fc.property(room, piece, (width, one) => {
        const least = leastLengths(width, one, 30);
        const roll = { width, selvage: 0, prewash: { length: 0, width: 0 } };
        for (let count = 1; count <= 30; count += 1) {
          const fill = fillRoll({ ...one, roll, count, squaring: 0 });
          expect(fill.length).toBe(least[count]);
        }
      }),
    );
  });
});

describe('mostFromLength', () => {
  test('mostFromLength holds as many pieces as the longest row of least lengths that fits', () => {
    fc.assert(
      fc.property(room, piece, fc.integer({ min: 1, max: 120 }), (width, one, length) => {
        const least = leastLengths(width, one, 400);
        const fitting = least.findLastIndex((needed) => needed <= length);
        const roll = { width, selvage: 0, prewash: { length: 0, width: 0 } };
        expect(mostFromLength({ ...one, roll, squaring: 0 }, length)).toBe(fitting);
      }),
    );
  });
});
