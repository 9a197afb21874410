import { type Candidate, isSame } from '../block/rank-options.ts';
import type { Extent } from '../block/size-quilt.ts';
import type {
  MismatchAnswer,
  Pair,
  PlanAnswer,
  PlanOption,
  ThreadAnswer,
  TimeAnswer,
  Unit,
  WeightAnswer,
} from '../contract.ts';
import { countTouching } from '../layout/count-touching.ts';
import { fromMillimetres, MILLIMETRES, roundTo } from '../length.ts';
import { GRAMS, massUnit } from '../mass.ts';
import type { ThreadPlan } from '../sewing/plan-thread.ts';
import type { QuiltWeight } from '../sewing/weigh-quilt.ts';
import type { Plan } from './reckon-plan.ts';
import { writeNeed } from './write-need.ts';
import { writeWork } from './write-work.ts';

/** The figures of a plan in the caller's unit, without what stands round every answer. */
export type PlanFigures = Pick<
  PlanAnswer,
  | 'grid'
  | 'block'
  | 'size'
  | 'wish'
  | 'fit'
  | 'options'
  | 'fabrics'
  | 'thread'
  | 'fringe'
  | 'bulk'
  | 'weight'
  | 'mismatch'
  | 'time'
  | 'work'
  | 'class'
  | 'layout'
>;

/**
 * Writes a plan in the unit of the request, once: lengths to 4 decimals, yards and pounds with
 * inches, metres and kilograms with centimetres.
 */
export function writePlan(plan: Plan, unit: Unit, pace: { readonly snip: number }): PlanFigures {
  const length = (value: number) => fromMillimetres(value, unit);
  const pair = (extent: Extent): Pair => writePair(extent, unit);
  return {
    grid: { columns: plan.grid.columns, rows: plan.grid.rows, blocks: plan.blocks },
    block: {
      cut: length(plan.block.cut),
      seam: length(plan.block.seam),
      face: length(plan.face),
      snipDepth: length(plan.block.snipDepth),
      snipPitch: length(plan.block.snipPitch),
      clearance: length(plan.clearance),
    },
    size: {
      sewn: pair(plan.sewn),
      stitchLine: pair(plan.stitchLine),
      washed: { ...pair(plan.washed), low: pair(plan.low), high: pair(plan.high) },
      change: {
        width: roundTo(-100 * plan.shrink.width, 4),
        height: roundTo(-100 * plan.shrink.height, 4),
      },
    },
    wish: { ...pair(plan.wish), at: plan.wish.at },
    fit: pair(plan.fit),
    options: plan.options.map((option) => writeOption(option, plan.chosen, unit)),
    fabrics: plan.cloth.map((need, at) => writeNeed(need, plan.purchases?.[at], unit)),
    thread: writeThread(plan.thread, unit),
    fringe: {
      snipsPerSide: plan.snips.perSide,
      snips: plan.snips.beforeJoining,
      snipsJoined: plan.snips.afterJoining,
      minutes: roundTo(plan.snips.beforeJoining * pace.snip, 4),
      minutesJoined: roundTo(plan.snips.afterJoining * pace.snip, 4),
    },
    bulk: {
      seamLayers: 2 * plan.layers,
      crossingLayers: 4 * plan.layers,
      crossingThickness: roundTo(4 * plan.thickness, 4),
      needle: plan.needle,
    },
    weight: writeWeight(plan.weight, unit),
    mismatch: writeMismatch(plan, unit),
    time: writeTime(plan.time),
    work: writeWork(plan, unit),
    layout: { cells: plan.cells, touching: countTouching(plan.cells) },
  };
}

/**
 * Writes an extent in inches or centimetres.
 *
 * @example
 * writePair({ width: 254, height: 508 }, 'in') // => { width: 10, height: 20 }
 */
export function writePair(extent: Extent, unit: Unit): Pair {
  return {
    width: fromMillimetres(extent.width, unit),
    height: fromMillimetres(extent.height, unit),
  };
}

function writeOption(option: Candidate, chosen: Candidate, unit: Unit): PlanOption {
  return {
    cut: fromMillimetres(option.cut, unit),
    columns: option.grid.columns,
    rows: option.grid.rows,
    blocks: option.grid.columns * option.grid.rows,
    washed: writePair(option.washed, unit),
    fit: writePair(option.fit, unit),
    fabric: option.fabric,
    minutes: roundTo(option.minutes, 4),
    chosen: isSame(option, chosen),
  };
}

function writeThread(thread: ThreadPlan, unit: Unit): ThreadAnswer {
  const bulk = unit === 'in' ? 'yd' : 'm';
  const length = (value: number) => roundTo(value / MILLIMETRES[bulk], 4);
  return {
    quilting: length(thread.seams.quilting),
    joins: length(thread.seams.joins),
    rows: length(thread.seams.rows),
    border: length(thread.seams.border),
    seamLength: length(thread.seamLength),
    ratio: roundTo(thread.ratio, 4),
    used: length(thread.used),
    singly: length(thread.singly),
    saved: length(thread.singly - thread.chained),
    bobbins: thread.bobbins,
    unit: bulk,
  };
}

function writeWeight(weight: QuiltWeight, unit: Unit): WeightAnswer {
  const mass = massUnit(unit);
  return {
    dry: roundTo(weight.dry / GRAMS[mass], 4),
    wet: roundTo(weight.wet / GRAMS[mass], 4),
    unit: mass,
    washer: { machine: weight.machine, drumLitres: roundTo(weight.drumLitres, 4) },
  };
}

function writeMismatch(
  { mismatch, ends }: Pick<Plan, 'mismatch' | 'ends'>,
  unit: Unit,
): MismatchAnswer {
  const length = (value: number) => fromMillimetres(value, unit);
  return {
    rowDeviation: length(mismatch.rowDeviation),
    perEndFromOneEnd: length(mismatch.fromOneEnd),
    perEndFromCentre: length(mismatch.fromCentre),
    within: roundTo(100 * mismatch.withinFromCentre, 4),
    withinFromOneEnd: roundTo(100 * mismatch.withinFromOneEnd, 4),
    half: length(ends.half),
    most: length(ends.most),
    mostFromOneEnd: length(ends.mostFromOneEnd),
    ends: ends.ends,
    unpick: roundTo(ends.unpick, 4),
    unpickFromOneEnd: roundTo(ends.unpickFromOneEnd, 4),
  };
}

function writeTime(time: TimeAnswer): TimeAnswer {
  const round = (minutes: number) => roundTo(minutes, 4);
  return {
    cut: round(time.cut),
    stack: round(time.stack),
    quilt: round(time.quilt),
    snip: round(time.snip),
    layout: round(time.layout),
    joins: round(time.joins),
    rows: round(time.rows),
    border: round(time.border),
    trim: round(time.trim),
    total: round(time.total),
  };
}
