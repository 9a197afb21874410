import { countNeeded } from '../block/count-whole.ts';
import type { Role } from '../contract.ts';
import { type Bolt, type BoltCount, countBolt } from './count-bolt.ts';

/** Squares that kits take of a role, and for the top of a print. */
export interface KitNeed {
  readonly role: Role;
  /** Absent where any bolt of the role will do. */
  readonly print?: string;
  readonly squares: number;
}

/** What is cut from one bolt; lengths in millimetres as on the bolt, before any prewash. */
export interface BoltCut extends BoltCount {
  readonly bolt: Bolt;
  /** Strips cut. */
  readonly cut: number;
  /** Squares that go into kits. */
  readonly used: number;
  /** Squares cut and in no kit. */
  readonly over: number;
  /** Cloth that the strips and the straight edge take. */
  readonly taken: number;
  /** Cloth left at full width. */
  readonly left: number;
}

/**
 * Shares out among the bolts what kits take: those that give fewest squares are cut up first, so that
 * as few bolts as may be are begun; ties to the earlier. Only the last bolt of a print or role can have
 * squares over.
 *
 * @param cut side of a square, mm
 * @returns one entry for each bolt, in their order
 */
export function cutBolts(
  bolts: readonly Bolt[],
  cut: number,
  needs: readonly KitNeed[],
): readonly BoltCut[] {
  const used = new Map<Bolt, number>();
  for (const { role, print, squares } of needs) {
    let lack = squares;
    const own = bolts.filter(
      (bolt) => bolt.role === role && (print === undefined || bolt.print === print),
    );
    const size = (bolt: Bolt) => countBolt(bolt, cut).squares;
    for (const bolt of own.toSorted((one, other) => size(one) - size(other))) {
      const here = Math.min(lack, size(bolt));
      used.set(bolt, here);
      lack -= here;
    }
  }
  return bolts.map((bolt) => cutOne(bolt, cut, used.get(bolt) ?? 0));
}

function cutOne(bolt: Bolt, cut: number, used: number): BoltCut {
  const count = countBolt(bolt, cut);
  const strips = used === 0 ? 0 : countNeeded(used, count.perStrip);
  const washed = strips === 0 ? 0 : strips * cut + bolt.squaring;
  const taken = washed / (1 - bolt.prewash.length);
  return {
    ...count,
    bolt,
    cut: strips,
    used,
    over: strips * count.perStrip - used,
    taken,
    left: Math.max(0, bolt.length - taken),
  };
}
