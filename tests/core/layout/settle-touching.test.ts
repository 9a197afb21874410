import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countTouching } from '#core/layout/count-touching.ts';
import { letterOf } from '#core/layout/letter-of.ts';
import { settleTouching } from '#core/layout/settle-touching.ts';
import { anyLayout, tallyPrints } from '../../support/layouts.ts';

const pile = (columns: number, counts: readonly number[]) => {
  const all = counts.flatMap((count, print) => Array.from({ length: count }, () => print));
  const rows = all.length / columns;
  return Array.from({ length: rows }, (_, row) => all.slice(row * columns, (row + 1) * columns));
};

describe('settleTouching', () => {
  test('settleTouching parts seven prints laid in piles on 7×7', () => {
    const counts = Array.from({ length: 7 }, () => 7);
    const found = settleTouching(pile(7, counts), counts, 'corners') ?? [];
    const cells = found.map((row) => row.map(letterOf).join(''));
    expect(countTouching(cells)).toEqual({ sides: 0, corners: 0 });
    expect(tallyPrints(cells, 7)).toEqual(counts);
  });

  test('settleTouching takes blocks of which there are some left', () => {
    expect(settleTouching([[0, 0]], [2, 1], 'sides')).toBeDefined();
    expect(settleTouching([[0, 0]], [2, 0], 'sides')).toBeUndefined();
  });

  test('settleTouching gives what it promises or nothing, and the same each time', () => {
    fc.assert(
      fc.property(
        anyLayout(6),
        fc.constantFrom('sides' as const, 'corners' as const),
        (own, touch) => {
          const laid = pile(own.grid.columns, own.counts);
          const found = settleTouching(laid, own.counts, touch);
          expect(settleTouching(laid, own.counts, touch)).toEqual(found);
          if (found === undefined) return;
          const cells = found.map((row) => row.map(letterOf).join(''));
          const { sides, corners } = countTouching(cells);
          expect(touch === 'sides' ? sides : sides + corners).toBe(0);
          expect(tallyPrints(cells, own.counts.length)).toEqual(own.counts);
        },
      ),
      { numRuns: 60 },
    );
  });
});
