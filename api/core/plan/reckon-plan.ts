import { choosePlan } from '../block/choose-plan.ts';
import { type Candidate, isSame, keepUnbeaten } from '../block/rank-options.ts';
import { type Block, faceOf } from '../block/size-block.ts';
import { type Extent, type Grid, sewnSize, stitchLineSize } from '../block/size-quilt.ts';
import { buyCloth, type ClothNeed } from '../cloth/buy-cloth.ts';
import type { BobbinChange, TimeAnswer } from '../contract.ts';
import { arrangePrints } from '../layout/arrange-prints.ts';
import { tidy } from '../length.ts';
import { chooseNeedle } from '../sewing/choose-needle.ts';
import { countSnips, type SnipCount } from '../sewing/count-snips.ts';
import { type EndsExpected, expectEnds } from '../sewing/expect-ends.ts';
import { findMiddle, type Middle } from '../sewing/find-middle.ts';
import { placeBobbins } from '../sewing/place-bobbins.ts';
import { planThread, type ThreadPlan } from '../sewing/plan-thread.ts';
import { type Mismatch, predictMismatch } from '../sewing/predict-mismatch.ts';
import { timeWork } from '../sewing/time-work.ts';
import { type QuiltWeight, weighQuilt } from '../sewing/weigh-quilt.ts';
import { washedSize } from '../wash/size-washed.ts';
import type { PlanSpec } from '../wish/plan-spec.ts';
import type { SizeWish } from '../wish/resolve-target.ts';
import type { OfferPurchase } from './buy-offers.ts';

/** A whole plan in millimetres, grams, minutes and fractions. */
export interface Plan {
  readonly grid: Grid;
  readonly blocks: number;
  readonly block: Block;
  readonly face: number;
  readonly clearance: number;
  readonly sewn: Extent;
  readonly stitchLine: Extent;
  readonly shrink: Extent;
  readonly washed: Extent;
  readonly low: Extent;
  readonly high: Extent;
  readonly wish: SizeWish;
  readonly fit: Extent;
  readonly options: readonly Candidate[];
  readonly chosen: Candidate;
  readonly cloth: readonly ClothNeed[];
  /** What `buyOffers` adds, in the order of the cloth; nothing for a print without offers. */
  readonly purchases?: readonly (OfferPurchase | undefined)[];
  readonly thread: ThreadPlan;
  readonly snips: SnipCount;
  readonly layers: number;
  /** Of one sandwich. */
  readonly thickness: number;
  readonly needle: string;
  readonly weight: QuiltWeight;
  readonly mismatch: Mismatch;
  readonly ends: EndsExpected;
  readonly bobbins: readonly BobbinChange[];
  readonly middle: Middle;
  readonly time: TimeAnswer;
  readonly cells: readonly string[];
}

/**
 * Reckons a plan: chooses block and grid, then works out everything that follows from them.
 *
 * @param spec a wish that has passed its checks, so that at least one plan exists
 */
export function reckonPlan(spec: PlanSpec): Plan {
  const shrinks = spec.shrink;
  const { wish, candidates, chosen } = choosePlan(spec);
  const { grid, cut } = chosen;
  const block: Block = { cut, ...spec.edges };
  const blocks = grid.columns * grid.rows;
  const sewn = sewnSize(grid, block);
  const thickness = spec.layers.reduce((sum, layer) => sum + layer.thickness, 0);
  const gsm = spec.layers.reduce((sum, layer) => sum + layer.gsm, 0);
  const cloth = buyCloth({ ...spec, blocks, cut });
  const thread = planThread({ grid, block, thickness }, spec.stitching);
  const snips = countSnips(grid, block);
  const pieces = cloth.reduce((sum, need) => sum + need.pieces + need.spare, 0);
  const { borderPasses, bobbin } = spec.stitching;
  const mismatch = predictMismatch(grid.columns, spec.trueness);
  return {
    grid,
    blocks,
    block,
    face: faceOf(block),
    clearance: tidy(block.seam - block.snipDepth),
    sewn,
    stitchLine: stitchLineSize(grid, block),
    shrink: shrinks.usual,
    washed: washedSize(sewn, shrinks.usual),
    low: washedSize(sewn, shrinks.most),
    high: washedSize(sewn, shrinks.least),
    wish,
    fit: chosen.fit,
    options: listOptions(candidates, chosen),
    chosen,
    cloth,
    thread,
    snips,
    layers: spec.layers.length,
    thickness,
    needle: chooseNeedle(thickestLayers(grid) * thickness),
    weight: weighQuilt({ blocks, cut, gsm }),
    mismatch,
    ends: expectEnds(grid.rows, mismatch),
    bobbins: placeBobbins(thread.chains, { grid, borderPasses, bobbin }, thread.bobbins),
    middle: findMiddle(grid.columns),
    time: timeWork(
      { grid, pieces, seams: thread.seams, snips: snips.beforeJoining, borderPasses },
      spec.pace,
    ),
    cells: arrangePrints(grid, topCounts(cloth)),
  };
}

/** Sandwiches at the thickest place: four where seams cross, two in a seam, one in a lone block. */
function thickestLayers({ columns, rows }: Grid): number {
  if (columns > 1 && rows > 1) return 4;
  return columns > 1 || rows > 1 ? 2 : 1;
}

/** What no other beats, and the chosen plan even where the size or grid asked for is beaten. */
function listOptions(candidates: readonly Candidate[], chosen: Candidate): readonly Candidate[] {
  const unbeaten = keepUnbeaten(candidates);
  return candidates.filter((one) => unbeaten.includes(one) || isSame(one, chosen));
}

function topCounts(cloth: readonly ClothNeed[]): readonly number[] {
  return cloth.filter((need) => need.role === 'top').map((need) => need.pieces);
}
