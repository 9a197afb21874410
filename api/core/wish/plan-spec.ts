import type { Block } from '../block/size-block.ts';
import type { Roll } from '../cloth/usable-width.ts';
import type { FabricName, Pace, PlanInput, PlanLayerInput, Role, Unit } from '../contract.ts';
import { toMillimetres } from '../length.ts';
import type { Stitching } from '../sewing/plan-thread.ts';
import type { Trueness } from '../sewing/predict-mismatch.ts';
import { DEFAULTS } from '../tables/defaults.ts';
import { prewashRates } from '../wash/prewash-rates.ts';
import { measuredLayers, shrinkPlan } from '../wash/shrink-plan.ts';
import type { WashedShrink } from '../wash/shrink-sandwich.ts';
import { usableCuts } from './check-block.ts';
import { findWish, type SizeWish } from './resolve-target.ts';

/** One cloth to buy: a print of a layer, or a layer that is all one cloth. */
export interface ClothSpec {
  /** Place of its layer in the sandwich. */
  readonly layer: number;
  readonly role: Role;
  readonly fabric: FabricName;
  /** Absent where the layer has one print only. */
  readonly print?: string;
  readonly weight: number;
  readonly roll: Roll;
}

/** A wish ready to reckon with: the resolved input in millimetres, fractions and grams. */
export interface PlanSpec {
  readonly unit: Unit;
  readonly wish?: SizeWish;
  readonly grid?: { readonly columns: number; readonly rows: number };
  /** The one size asked for. */
  readonly cut?: number;
  /** Every size to consider. */
  readonly cuts: readonly number[];
  readonly edges: Omit<Block, 'cut'>;
  readonly layers: readonly PlanLayerInput[];
  readonly cloths: readonly ClothSpec[];
  readonly shrink: WashedShrink;
  /** Fraction of extra pieces. */
  readonly spare: number;
  readonly squaring: number;
  readonly step: number;
  /** Shorter side of a rectangle of cloth worth keeping. */
  readonly usable: number;
  readonly stitching: Stitching;
  readonly pace: Pace;
  readonly trueness: Trueness;
}

/**
 * Turns a resolved input into millimetres, once.
 */
export function specifyPlan(input: PlanInput): PlanSpec {
  const mm = (value: number) => toMillimetres(value, input.unit);
  const wish = findWish(input.target, input.unit);
  const { block, stitch, tolerance, target } = input;
  const prewashes = measuredLayers(input).map(prewashRates);
  return {
    unit: input.unit,
    ...(wish !== undefined && { wish }),
    ...('columns' in target && { grid: { columns: target.columns, rows: target.rows } }),
    ...(block.cut !== undefined && { cut: mm(block.cut) }),
    cuts: usableCuts(input).map(mm),
    edges: {
      seam: mm(block.seam),
      snipDepth: mm(block.snipDepth),
      snipPitch: mm(block.snipPitch),
    },
    layers: input.layers,
    cloths: input.layers.flatMap((layer, index) =>
      specifyCloths(layer, { index, prewash: prewashes[index] ?? { length: 0, width: 0 }, mm }),
    ),
    shrink: shrinkPlan(input),
    spare: input.spare / 100,
    squaring: mm(DEFAULTS[input.unit].squaring),
    step: mm(DEFAULTS[input.unit].step),
    usable: mm(DEFAULTS[input.unit].usable),
    stitching: {
      length: mm(stitch.length),
      tail: mm(stitch.tail),
      link: mm(stitch.link),
      chained: stitch.chained,
      borderPasses: stitch.borderPasses,
      bobbin: mm(stitch.bobbin),
      ...(stitch.ratio !== undefined && { ratio: stitch.ratio }),
    },
    pace: input.pace,
    trueness: { seam: mm(tolerance.seam), cut: mm(tolerance.cut), ease: mm(tolerance.ease) },
  };
}

interface ClothFrame {
  readonly index: number;
  readonly prewash: Roll['prewash'];
  readonly mm: (value: number) => number;
}

function specifyCloths(
  layer: PlanLayerInput,
  { index, prewash, mm }: ClothFrame,
): readonly ClothSpec[] {
  const selvage = mm(layer.selvage);
  // One object for equal rolls, by which the reckoning knows them as equal.
  const widths = new Set(layer.prints.map((print) => print.width));
  const rolls = new Map(
    [...widths].map((width) => [width, { width: mm(width), selvage, prewash }]),
  );
  return layer.prints.map((print) => ({
    layer: index,
    role: layer.role,
    fabric: layer.fabric,
    ...(layer.prints.length > 1 && { print: print.id }),
    weight: print.count ?? print.share ?? 1,
    roll: rolls.get(print.width) ?? { width: mm(print.width), selvage, prewash },
  }));
}
