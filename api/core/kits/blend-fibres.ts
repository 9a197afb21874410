import { apportionBlocks } from '../cloth/apportion-blocks.ts';
import type { Fibre } from '../contract.ts';

/** Cloth of known fibres. */
export interface FibreMass {
  /** Any unit, above 0. */
  readonly mass: number;
  readonly fibres: readonly Fibre[];
}

/** Fibres of less than this share are not named on a label: 16 CFR 303.3. */
const NAMED = 0.05;
export const OTHER_FIBRE = 'other fibre';

/**
 * The fibres of several cloths together, in whole percent by mass that sum to 100 (largest remainder).
 * Largest first, ties by name; what is under 5 % together as other fibre, last. Order and the 5 % as
 * in 16 CFR 303.
 *
 * @param cloths at least one
 *
 * @example
 * blendFibres([{ mass: 140, fibres: [{ fibre: 'cotton', percent: 100 }] }, { mass: 260, fibres: [{ fibre: 'polyester', percent: 100 }] }]) // => [{ fibre: 'polyester', percent: 65 }, { fibre: 'cotton', percent: 35 }]
 */
export function blendFibres(cloths: readonly FibreMass[]): readonly Fibre[] {
  const masses = new Map<string, number>();
  for (const { mass, fibres } of cloths) {
    const whole = fibres.reduce((sum, { percent }) => sum + percent, 0);
    for (const { fibre, percent } of fibres) {
      masses.set(fibre, (masses.get(fibre) ?? 0) + (mass * percent) / whole);
    }
  }
  const total = [...masses.values()].reduce((sum, mass) => sum + mass, 0);
  const isNamed = ([fibre, mass]: readonly [string, number]) =>
    fibre !== OTHER_FIBRE && mass >= total * NAMED - 1e-9 * total;
  const named = [...masses].filter(isNamed).toSorted(byMass);
  const other = total - named.reduce((sum, [, mass]) => sum + mass, 0);
  const rows = other > 1e-9 * total ? [...named, [OTHER_FIBRE, other] as const] : named;
  const percents = apportionBlocks(
    100,
    rows.map(([, mass]) => mass),
  );
  return rows
    .map(([fibre], at) => ({ fibre, percent: percents[at] ?? 0 }))
    .filter(({ percent }) => percent > 0);
}

function byMass(one: readonly [string, number], other: readonly [string, number]): number {
  const gap = other[1] - one[1];
  return Math.abs(gap) > 1e-9 * one[1] ? gap : one[0] < other[0] ? -1 : 1;
}
