import type { StashLimit } from '../contract.ts';
import { canLay } from '../layout/can-lay.ts';
import { layApart } from '../layout/lay-apart.ts';
import { SIZE_LIMITS } from '../limits.ts';
import { type GridSize, listGrids } from './list-grids.ts';
import { nameLimits } from './name-limits.ts';
import type { StashSpec } from './stash-spec.ts';
import type { Supply } from './supply-blocks.ts';

/** A plan that can be cut, with the arrangement that proves it. */
export interface StashPlan {
  readonly grid: GridSize;
  readonly supply: Supply;
  readonly cells: readonly string[];
  readonly limitedBy: readonly StashLimit[];
}

/** A grid of one cut size with all that its size can be judged by. */
interface Candidate {
  readonly grid: GridSize;
  readonly supply: Supply;
  /** Every grid of the same cut size that has the shape asked for, largest first. */
  readonly grids: readonly GridSize[];
  readonly area: number;
  /** How far the shape is from the one asked for, in steps of `ALIKE`. */
  readonly farness: number;
}

/** Shapes within this of each other count as alike: a twentieth, own judgement. */
const ALIKE = 0.05;
/** A plan that is nearer in shape is shown beside a larger one down to this part of its area. */
const WORTH = 0.75;
/** Grids for which no arrangement was found before the search is given up. */
const MOST_FAILURES = 24;

/**
 * The plans that the pieces give, largest first: for each cut size the largest, and beside it any that
 * is nearer in shape and not much smaller; of all these none that another beats in being at least as
 * large when washed, as near in shape, and of as few blocks. At most `SIZE_LIMITS.stashOptions`.
 * Each has been laid out, apart where that was asked.
 *
 * @param supplies one a cut size
 * @returns the plans, and what keeps the first from being larger or from being at all
 */
export function choosePlans(
  spec: StashSpec,
  supplies: readonly Supply[],
): { readonly plans: readonly StashPlan[]; readonly limitedBy: readonly StashLimit[] } {
  const hasTarget = !('ratio' in spec.aim);
  const listed = supplies.map((supply) => ({ supply, grids: listGrids(spec, supply.cut) }));
  const squaresOf = new Map(
    supplies.map((supply) => [supply, supply.prints.map((print) => print.squares)]),
  );
  const chosen: (Candidate & StashPlan)[] = [];
  const largest = new Map<number, Candidate>();
  let failures = 0;
  for (const candidate of listCandidates(listed)) {
    if (chosen.length === SIZE_LIMITS.stashOptions || failures === MOST_FAILURES) break;
    const { grid, grids, supply } = candidate;
    const squares = squaresOf.get(supply) ?? [];
    if (spec.touch !== undefined && !canLay(grid, squares, spec.touch)) continue;
    const larger = largest.get(grid.cut);
    if (larger !== undefined && !isWorth(candidate, larger, chosen)) continue;
    const isBeaten = chosen.some((other) => beats(other, candidate));
    const cells = isBeaten ? undefined : layApart(grid, squares, spec.touch);
    if (cells !== undefined) {
      const choice = { blocks: grid.blocks, grids, supply, hasTarget };
      const limitedBy = nameLimits({ ...choice, hasLarger: larger !== undefined });
      chosen.push({ ...candidate, cells, limitedBy });
    } else if (!isBeaten) failures += 1;
    if (larger === undefined && (isBeaten || cells !== undefined)) largest.set(grid.cut, candidate);
  }
  const [first] = listed;
  const none = { blocks: 0, hasLarger: false, hasTarget };
  return {
    plans: chosen,
    limitedBy:
      chosen[0]?.limitedBy ?? (first === undefined ? [] : nameLimits({ ...none, ...first })),
  };
}

/** Whether a smaller plan of one cut size is nearer in shape than all that are shown, and not much smaller. */
function isWorth(candidate: Candidate, larger: Candidate, chosen: readonly Candidate[]): boolean {
  if (candidate.area < WORTH * larger.area) return false;
  const shown = chosen.filter(({ grid }) => grid.cut === candidate.grid.cut);
  return [larger, ...shown].every((other) => candidate.farness < other.farness);
}

/** Whatever the pieces are enough for, largest first. */
function listCandidates(
  listed: readonly Pick<Candidate, 'supply' | 'grids'>[],
): readonly Candidate[] {
  return listed
    .flatMap(({ supply, grids }) => {
      return grids
        .filter((grid) => grid.blocks <= supply.blocks)
        .map((grid) => ({
          grid,
          supply,
          grids,
          area: Math.round(grid.washed.width * grid.washed.height),
          farness: Math.floor((grid.strain - 1) / ALIKE + 1e-9),
        }));
    })
    .toSorted(
      (one, other) =>
        other.area - one.area || one.farness - other.farness || one.grid.blocks - other.grid.blocks,
    );
}

/** Whether one of at least the same area, chosen before, leaves nothing to say for the other. */
function beats(one: Candidate, other: Candidate): boolean {
  return one.farness <= other.farness && one.grid.blocks <= other.grid.blocks;
}
