import { countNeeded } from '../block/count-whole.ts';
import { isQuilt } from '../block/propose-grids.ts';
import { byFit, type Candidate } from '../block/rank-options.ts';
import type { Grid } from '../block/size-quilt.ts';
import { listCandidates, weighCandidate } from '../block/weigh-options.ts';
import { apportionBlocks } from '../cloth/apportion-blocks.ts';
import { NUMBER_LIMITS } from '../limits.ts';
import type { PlanSpec } from '../wish/plan-spec.ts';
import type { SizeWish } from '../wish/resolve-target.ts';
import { type BoltEnd, countSquaresLeft } from './count-squares-left.ts';

/** Cloth of which there is no more: that in hand, and whatever has been bought. */
export interface ClothLimit extends BoltEnd {
  /** Place of the cloth in the plan. */
  readonly at: number;
}

/** The quilt that was wished for. */
export interface Wished {
  readonly wish: SizeWish;
  readonly cut: number;
  readonly grid: Grid;
}

/**
 * The plan nearest to a wish that can be cut from what there is: of every cut size that the plan considers, the grids
 * with as many columns and rows as its own options have or fewer, each within the limits in whole strips
 * (`countSquaresLeft`), spare squares included; best fit first as in the options, ties to fewer blocks.
 *
 * @returns nothing where not even one block can be cut
 */
export function nearestPlan(
  spec: PlanSpec,
  { wish, cut, grid }: Wished,
  limits: readonly ClothLimit[],
): Candidate | undefined {
  const shrink = spec.shrink.usual;
  const offered = listCandidates(spec, wish, shrink);
  const bounds = boundGrids([{ cut, grid }, ...offered]);
  const found = [...bounds].flatMap(([size, most]) =>
    listCuttable(spec, { cut: size, most, limits }).map((one) =>
      weighCandidate(spec, wish, { cut: size, grid: one, shrink }),
    ),
  );
  return found.toSorted(byFit)[0];
}

/** For each cut size the most columns and rows that any of its options has. */
function boundGrids(
  options: readonly { readonly cut: number; readonly grid: Grid }[],
): ReadonlyMap<number, Grid> {
  const bounds = new Map<number, Grid>();
  for (const { cut, grid } of options) {
    const { columns = 0, rows = 0 } = bounds.get(cut) ?? {};
    const most = { columns: Math.max(columns, grid.columns), rows: Math.max(rows, grid.rows) };
    bounds.set(cut, most);
  }
  return bounds;
}

interface Size {
  readonly cut: number;
  readonly most: Grid;
  readonly limits: readonly ClothLimit[];
}

/**
 * For each number of columns the most rows that can be cut. Fewer rows are farther from the wish, but where a row less
 * would fit better: two are given then.
 */
function listCuttable(spec: PlanSpec, { cut, most, limits }: Size): readonly Grid[] {
  const block = { cut, seam: spec.edges.seam };
  const room = limits.map((limit) => ({ ...limit, squares: squaresIn(spec, cut, limit) }));
  const canCut = (blocks: number) =>
    room.every(({ at, squares }) => squaresOf(spec, at, blocks) <= squares);
  const grids: Grid[] = [];
  for (
    let columns = 1;
    columns <= Math.min(most.columns, NUMBER_LIMITS.columns.most);
    columns += 1
  ) {
    const fits = (rows: number) => canCut(columns * rows) && isQuilt({ columns, rows }, block);
    let rows = most.rows;
    while (rows > 0 && !fits(rows)) rows -= 1;
    if (rows > 0) grids.push({ columns, rows });
    if (rows > 1 && fits(rows - 1)) grids.push({ columns, rows: rows - 1 });
  }
  return grids;
}

function squaresIn(spec: PlanSpec, cut: number, { at, ...end }: ClothLimit): number {
  const roll = spec.cloths[at]?.roll;
  return roll === undefined ? 0 : countSquaresLeft({ cut, roll, squaring: spec.squaring }, end);
}

/** Squares of one cloth for so many blocks, spare ones included, as `buyCloth` counts them. */
function squaresOf(spec: PlanSpec, at: number, blocks: number): number {
  const { layer } = spec.cloths[at] ?? {};
  const mates = spec.cloths.map((cloth, place) => ({ ...cloth, place }));
  const own = mates.filter((cloth) => cloth.layer === layer);
  const shares = apportionBlocks(
    blocks,
    own.map(({ weight }) => weight),
  );
  const pieces = shares[own.findIndex(({ place }) => place === at)] ?? 0;
  return pieces + countNeeded(pieces * spec.spare, 1);
}
