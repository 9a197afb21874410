import { leastStrips, USUAL_STEPS } from './least-strips.ts';
import type { PieceKind } from './list-levels.ts';
import type { Budget } from './strip-plan.ts';
import { type CutStrip, heightOf, trimPlan } from './trim-plan.ts';

/** The strips to cut, and how short any plan could be; mm. */
export interface LeastCut {
  readonly strips: readonly CutStrip[];
  readonly length: number;
  /** Proven. */
  readonly bound: number;
  readonly optimal: boolean;
}

/**
 * The shortest plan of strips found by `leastStrips`, with exactly the pieces wanted in it.
 *
 * @param kinds wanted any number of times, none included; those wanted fit the roll one way at least
 * @param usable width that can be cut, mm
 * @param allowance steps that are left for this and whatever comes after it; written over
 *
 * @example
 * cutLeast([{ across: 30, along: 20, count: 4, canTurn: false }], 100) // => { strips: [{ times: 1, height: 20, pieces: [{ kind: 0, count: 3, turned: false }], used: 90 }, { times: 1, height: 20, pieces: [{ kind: 0, count: 1, turned: false }], used: 30 }], length: 40, bound: 40, optimal: true }
 */
export function cutLeast(
  kinds: readonly PieceKind[],
  usable: number,
  allowance: Budget = { steps: USUAL_STEPS },
): LeastCut {
  const places = kinds.flatMap((kind, at) => (kind.count > 0 ? [at] : []));
  const wanted = kinds.filter((kind) => kind.count > 0);
  if (wanted.length === 0) return { strips: [], length: 0, bound: 0, optimal: true };
  const { levels, strips, bound, optimal } = leastStrips(wanted, usable, allowance);
  const cut = trimPlan(wanted, levels, strips).map((strip) => ({
    ...strip,
    pieces: strip.pieces.map((piece) => ({ ...piece, kind: places[piece.kind] ?? piece.kind })),
  }));
  const length = heightOf(cut);
  return { strips: cut, length, bound: optimal ? length : Math.min(bound, length), optimal };
}
