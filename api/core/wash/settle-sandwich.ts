import { BUCKLING } from '../tables/defaults.ts';

/** One layer seen by the wash: how much it wants to shrink, and how firmly it pulls. */
export interface WashLayer {
  /** Fraction, positive when it gets smaller. */
  readonly rate: number;
  /** Mass times grip; any unit, above 0. */
  readonly weight: number;
}

/**
 * The shrink at which a sandwich comes to rest.
 *
 * Own model: cloth pulls when stretched and buckles when pressed. Layer i wants rate kᵢ and has
 * weight wᵢ; the whole settles at the k with Σ wᵢ·g(kᵢ − k) = 0, where g(x) = x for x > 0 (the
 * layer is stretched) and βx for x < 0 (it buckles). The sum falls steadily and is straight
 * between the rates, so the root is found exactly by trying each gap between neighbours.
 * β = 1 is the weighted mean and β = 0 the greatest rate: every answer lies between the two.
 *
 * @param layers at least one, rates as fractions
 * @param buckling β from 0 to 1, 0.25 unless told
 * @returns fraction
 *
 * @example
 * settleSandwich([{ rate: 0.04, weight: 1 }, { rate: 0.02, weight: 1 }], 1) // => 0.03
 * settleSandwich([{ rate: 0.04, weight: 1 }, { rate: 0.02, weight: 1 }], 0) // => 0.04
 */
export function settleSandwich(layers: readonly WashLayer[], buckling: number = BUCKLING): number {
  const sorted = layers.toSorted((one, other) => other.rate - one.rate);
  let pullWeight = 0;
  let pullSum = 0;
  let pressWeight = sorted.reduce((sum, layer) => sum + layer.weight * buckling, 0);
  let pressSum = sorted.reduce((sum, layer) => sum + layer.weight * buckling * layer.rate, 0);
  for (const [index, layer] of sorted.entries()) {
    pullWeight += layer.weight;
    pullSum += layer.weight * layer.rate;
    pressWeight -= layer.weight * buckling;
    pressSum -= layer.weight * buckling * layer.rate;
    const next = sorted[index + 1]?.rate ?? Number.NEGATIVE_INFINITY;
    const rest = (pullSum + pressSum) / (pullWeight + pressWeight);
    if (rest >= next) return rest;
  }
  throw new Error('A sandwich needs at least one layer');
}
