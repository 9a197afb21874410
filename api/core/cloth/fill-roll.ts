import { countFitting } from '../block/count-whole.ts';
import { type Roll, usableWidth } from './usable-width.ts';

/** One size of piece wanted from one roll; lengths in millimetres. */
export interface RollOrder {
  readonly roll: Roll;
  /** Side across the roll. */
  readonly width: number;
  /** Side along the roll. */
  readonly length: number;
  readonly count: number;
  /** A directional piece is never turned. */
  readonly directional: boolean;
  readonly squaring: number;
}

/** Strips cut alike. */
export interface StripKind {
  readonly strips: number;
  readonly length: number;
  readonly perStrip: number;
  readonly turned: boolean;
  /** Width left over in each, mm. */
  readonly left: number;
}

export interface RollFill {
  readonly usableWidth: number;
  /** Least length as bought; mm. */
  readonly length: number;
  readonly kinds: readonly StripKind[];
}

/**
 * The least length of roll for one size of piece, over all plans of strips right across the roll.
 *
 * A strip holds pieces lying one way: turning some within a strip as tall as the taller way would
 * only put wider pieces into it. So a plan is a number of strips of each way, and trying every
 * number of the one with the fewest that then suffice of the other finds the least: exact.
 * Length as bought is (Σ strips·height + squaring) / (1 − prewash lengthwise).
 *
 * @returns the least plan, ties to fewer turned strips; no kinds where the piece fits neither way
 */
export function fillRoll(order: RollOrder): RollFill {
  const usable = usableWidth(order.roll);
  const [plain, turned] = waysOf(order, usable);
  const best = trySplits(order.count, plain, turned);
  const kinds = best.filter((kind) => kind.strips > 0);
  const cloth = kinds.reduce((sum, kind) => sum + kind.strips * kind.length, 0);
  const bought = cloth === 0 ? 0 : (cloth + order.squaring) / (1 - order.roll.prewash.length);
  return { usableWidth: usable, length: bought, kinds };
}

/**
 * The most pieces of one size that a given length of roll holds, over all plans of strips.
 *
 * @param length as it lies on the bolt, mm
 * @returns whole, 0 or more
 */
export function mostFromLength(order: Omit<RollOrder, 'count'>, length: number): number {
  const usable = usableWidth(order.roll);
  const [plain, turned] = waysOf(order, usable);
  const room = length * (1 - order.roll.prewash.length) - order.squaring;
  if (room <= 0) return 0;
  let most = 0;
  for (let strips = 0; strips <= countFitting(room, plain.length); strips += 1) {
    const rest = room - strips * plain.length;
    const others = turned.perStrip > 0 ? countFitting(Math.max(0, rest), turned.length) : 0;
    most = Math.max(most, strips * plain.perStrip + others * turned.perStrip);
  }
  return most;
}

type Way = Omit<StripKind, 'strips'>;

function waysOf(order: Omit<RollOrder, 'count'>, usable: number): readonly [Way, Way] {
  const way = (across: number, along: number, turned: boolean): Way => {
    const perStrip = turned && order.directional ? 0 : countFitting(usable, across);
    return { length: along, perStrip, turned, left: usable - perStrip * across };
  };
  return [way(order.width, order.length, false), way(order.length, order.width, true)];
}

function trySplits(count: number, plain: Way, turned: Way): readonly StripKind[] {
  const stripsFor = (pieces: number, way: Way) =>
    way.perStrip === 0 ? Number.POSITIVE_INFINITY : Math.ceil(pieces / way.perStrip);
  const highest = stripsFor(count, plain);
  let best: readonly StripKind[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (let strips = Math.min(highest, count); strips >= 0; strips -= 1) {
    const rest = Math.max(0, count - strips * plain.perStrip);
    const others = rest === 0 ? 0 : stripsFor(rest, turned);
    const length = strips * plain.length + others * turned.length;
    if ((plain.perStrip > 0 || strips === 0) && length < least - 1e-9) {
      least = length;
      best = [
        { ...plain, strips },
        { ...turned, strips: others },
      ];
    }
  }
  return Number.isFinite(least) ? best : [];
}
