import type { PlanSpec } from '../wish/plan-spec.ts';
import type { SizeWish } from '../wish/resolve-target.ts';
import { byFit, type Candidate, chooseHandiest, isSame } from './rank-options.ts';
import { listCandidates, weighCandidate } from './weigh-options.ts';

/** The plan to work out, and what it was chosen from. */
export interface PlanChoice {
  /** The size that the candidates were weighed against. */
  readonly wish: SizeWish;
  /** Best fit first. */
  readonly candidates: readonly Candidate[];
  readonly chosen: Candidate;
}

/**
 * The plan to work out in full: the grid asked for, else the handiest of the best fits in the size asked for.
 *
 * @param spec a wish that has passed its checks, so that at least one plan exists
 */
export function choosePlan(spec: PlanSpec): PlanChoice {
  const shrink = spec.shrink.usual;
  if (spec.grid !== undefined && spec.cut !== undefined) {
    const option = { cut: spec.cut, grid: spec.grid, shrink };
    const { washed } = weighCandidate(spec, { width: 0, height: 0, at: 'washed' }, option);
    const wish: SizeWish = { ...washed, at: 'washed' };
    const chosen = weighCandidate(spec, wish, option);
    const others = listCandidates(spec, wish, shrink).filter((other) => !isSame(other, chosen));
    return { wish, candidates: [chosen, ...others].toSorted(byFit), chosen };
  }
  if (spec.wish === undefined) throw new Error('A plan needs a wish or a grid with its block');
  const candidates = listCandidates(spec, spec.wish, shrink);
  const own = candidates.filter((other) => spec.cut === undefined || other.cut === spec.cut);
  return { wish: spec.wish, candidates, chosen: chooseHandiest(own) };
}
