import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StashShape } from '#core/contract.ts';
import { FEWEST_BLOCKS, listGrids, MOST_STRAIN } from '#core/stash/list-grids.ts';
import { type StashSpec, specifyStash } from '#core/stash/stash-spec.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { topPiece } from '../../support/stashes.ts';

const specify = (shape?: StashShape, seam = 1): StashSpec => {
  const read = resolveStash({
    pieces: [topPiece('a', 21, 18)],
    block: { seam },
    ...(shape && { shape }),
  });
  if (!read.ok) throw new Error('refused');
  return specifyStash(read.value.input);
};
const names = (spec: StashSpec, inches: number) =>
  listGrids(spec, inches * 25.4).map(({ columns, rows }) => `${columns}x${rows}`);

describe('listGrids', () => {
  test('listGrids stops at the first column and row that reach the size', () => {
    // Sewn 40 by 50 with faces of 8: ceil(38 / 8) = 5 across, ceil(48 / 8) = 6 down.
    const shape = { target: { width: 40, height: 50, at: 'sewn' as const } };
    expect(names(specify(shape), 10)[0]).toBe('5x6');
    // A square of 26 by 26 in is 1.31 times as wide for its height as 26 by 34.
    expect(names(specify({ target: { columns: 3, rows: 4 } }), 10)).toEqual(['3x4', '2x3']);
  });

  test('listGrids gives less than four blocks only where they were asked for', () => {
    expect(names(specify({ ratio: 0.2 }), 10).at(-1)).not.toBe('1x2');
    expect(names(specify({ target: { columns: 1, rows: 2 } }), 10)).toEqual(['1x2']);
  });

  test('listGrids has every grid of the shape, and no other', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 25, max: 400 }),
        fc.integer({ min: 4, max: 20 }),
        (percent, inches) => {
          const ratio = percent / 100;
          const spec = specify({ ratio });
          const cut = inches * 25.4;
          const found = new Set(names(spec, inches));
          for (let columns = 1; columns <= 15; columns += 1) {
            for (let rows = 1; rows <= 15; rows += 1) {
              const width = (columns * (cut - 50.8) + 50.8) * (1 - spec.shrink.width);
              const height = (rows * (cut - 50.8) + 50.8) * (1 - spec.shrink.height);
              const strain = Math.max(width / height / ratio, (ratio * height) / width);
              if (Math.abs(strain - MOST_STRAIN) < 1e-6) continue;
              const isLarge = Math.max(columns, rows) * (cut - 50.8) + 50.8 > 6000;
              const isOf = !isLarge && strain < MOST_STRAIN && columns * rows >= FEWEST_BLOCKS;
              expect(found.has(`${columns}x${rows}`)).toBe(isOf);
            }
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  test('listGrids puts most blocks first and stays within the greatest quilt', () => {
    const grids = listGrids(specify({ ratio: 1 }), 254);
    const blocks = grids.map((grid) => grid.blocks);
    expect(blocks).toEqual(blocks.toSorted((one, other) => other - one));
    expect(grids[0]?.sewn.width).toBeLessThanOrEqual(6000);
  });
});
