import { isQuilt, proposeGrids } from '../block/propose-grids.ts';
import type { PlanInput } from '../contract.ts';
import { fromMillimetres, toMillimetres } from '../length.ts';
import { LENGTH_LIMITS, NUMBER_LIMITS, SIZE_LIMITS } from '../limits.ts';
import { shrinkPlan } from '../wash/shrink-plan.ts';
import { sewFor } from '../wash/size-washed.ts';
import { usableCuts } from './check-block.ts';
import { isSound, type Reading } from './reading.ts';
import { findWish } from './resolve-target.ts';

/**
 * Checks the number of blocks: within the greatest quilt (`quilt-too-large`), as far as nothing was
 * wrong with what it hangs on, and equal to what the counts of the prints come to where they were
 * given (`counts-do-not-sum`), which needs the grid.
 */
export function checkGrid(reading: Reading, input: PlanInput): void {
  const { target } = input;
  const canJudge = isSound(reading, ['target'], ['block'], ['cuts'], ['layers'], ['swatches']);
  const blocks = 'columns' in target ? target.columns * target.rows : undefined;
  checkCounts(reading, input, blocks);
  if (!canJudge || hasGrid(input)) return;
  const side = Math.floor(fromMillimetres(LENGTH_LIMITS.quiltSide.most, input.unit));
  const { columns, rows } = NUMBER_LIMITS;
  const counts = `${SIZE_LIMITS.blocks} blocks, ${columns.most} columns, ${rows.most} rows`;
  const expected = `at most ${counts} and ${side} ${input.unit} a side`;
  reading.faults.push({ code: 'quilt-too-large', path: ['target'], expected });
}

function hasGrid(input: PlanInput): boolean {
  const mm = (value: number) => toMillimetres(value, input.unit);
  const seam = mm(input.block.seam);
  const cuts = input.block.cut === undefined ? usableCuts(input) : [input.block.cut];
  const { target } = input;
  if ('columns' in target) return cuts.some((cut) => isQuilt(target, { cut: mm(cut), seam }));
  const wish = findWish(target, input.unit);
  if (wish === undefined) return true;
  const sewn = wish.at === 'sewn' ? wish : sewFor(wish, shrinkPlan(input).usual);
  return cuts.some((cut) => proposeGrids(sewn, { cut: mm(cut), seam }).length > 0);
}

function checkCounts(reading: Reading, input: PlanInput, blocks: number | undefined): void {
  for (const [index, layer] of input.layers.entries()) {
    if (!layer.prints.some((print) => print.count !== undefined)) continue;
    const sum = layer.prints.reduce((total, print) => total + (print.count ?? 0), 0);
    const everyCounted = layer.prints.every((print) => print.count !== undefined);
    if (everyCounted && sum === blocks) continue;
    reading.faults.push({
      code: 'counts-do-not-sum',
      path: ['layers', index, 'prints'],
      expected:
        blocks === undefined
          ? 'a target in columns and rows, so that the counts can be met'
          : `a count for every print, ${blocks} in all`,
      received: sum,
    });
  }
}
