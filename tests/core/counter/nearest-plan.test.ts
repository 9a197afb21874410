import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { misfit } from '#core/block/rank-options.ts';
import { sewnSize } from '#core/block/size-quilt.ts';
import { countSquaresLeft } from '#core/counter/count-squares-left.ts';
import { listNeeds } from '#core/counter/list-needs.ts';
import { nearestPlan } from '#core/counter/nearest-plan.ts';
import { washedSize } from '#core/wash/size-washed.ts';
import { counterFor } from '../../support/counter-needs.ts';

const throwFor40by50 = counterFor({ target: { width: 40, height: 50 } });
const inch = (value: number) => value * 25.4;

/** Whether the needs of a grid come out of what there is, by the needs themselves. */
function isCuttable(
  { spec }: typeof throwFor40by50,
  chosen: {
    readonly cut: number;
    readonly grid: { readonly columns: number; readonly rows: number };
  },
  { at, ...end }: { readonly at: number; readonly width: number; readonly length: number },
): boolean {
  const need = listNeeds(spec, chosen)[at];
  return need !== undefined && countSquaresLeft(need, end) >= need.squares;
}

describe('nearestPlan', () => {
  test('nearestPlan is the wished quilt itself where there is enough', () => {
    const { spec, choice } = throwFor40by50;
    const wished = { wish: choice.wish, ...choice.chosen };
    const limit = { at: 4, width: inch(42), length: inch(36 * 9) };
    const best = choice.candidates[0];
    expect(nearestPlan(spec, wished, [limit])).toMatchObject({ cut: best?.cut, grid: best?.grid });
  });

  test('what it names can be cut, and no grid of any considered size fits better', () => {
    const drawn = fc.record({
      at: fc.integer({ min: 0, max: 4 }),
      eighths: fc.integer({ min: 1, max: 24 }),
      width: fc.constantFrom(42, 44, 58, 108),
    });
    fc.assert(
      fc.property(drawn, ({ at, eighths, width }) => {
        const { spec, choice } = throwFor40by50;
        const limit = { at, width: inch(width), length: inch(4.5 * eighths) };
        const found = nearestPlan(spec, { wish: choice.wish, ...choice.chosen }, [limit]);
        if (found !== undefined) expect(isCuttable(throwFor40by50, found, limit)).toBe(true);
        const best = found === undefined ? Number.POSITIVE_INFINITY : misfit(found);
        for (const cut of spec.cuts) {
          for (let columns = 1; columns <= 9; columns += 1) {
            for (let rows = 1; rows <= 12; rows += 1) {
              const grid = { columns, rows };
              const washed = washedSize(sewnSize(grid, { cut, ...spec.edges }), spec.shrink.usual);
              const fit = {
                width: washed.width - choice.wish.width,
                height: washed.height - choice.wish.height,
              };
              if (misfit({ fit }) > best - 0.01 || isBeyond(fit)) continue;
              expect({
                cut,
                grid,
                is: isCuttable(throwFor40by50, { cut, grid }, limit),
              }).toMatchObject({ is: false });
            }
          }
        }
      }),
      { numRuns: 25 },
    );
  });

  test('nearestPlan heeds all that there is no more of', () => {
    const { spec, choice } = throwFor40by50;
    const wished = { wish: choice.wish, ...choice.chosen };
    const limits = [
      { at: 4, width: inch(42), length: inch(45) },
      { at: 0, width: inch(42), length: inch(9) },
    ];
    const found = nearestPlan(spec, wished, limits);
    if (found === undefined) throw new Error('There is a plan for this');
    for (const limit of limits) expect(isCuttable(throwFor40by50, found, limit)).toBe(true);
  });

  test('nearestPlan is nothing where not one block can be cut', () => {
    const { spec, choice } = throwFor40by50;
    const wished = { wish: choice.wish, ...choice.chosen };
    expect(nearestPlan(spec, wished, [{ at: 4, width: inch(42), length: 10 }])).toBeUndefined();
  });
});

/** Grids larger than the two nearest counts each way are no options of a plan. */
function isBeyond(fit: { readonly width: number; readonly height: number }): boolean {
  return fit.width > 0 || fit.height > 0;
}
