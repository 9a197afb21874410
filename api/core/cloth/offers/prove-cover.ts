import { commonStep, raiseToStep } from '../strips/common-step.ts';
import { listPatterns } from '../strips/list-patterns.ts';
import type { Budget } from '../strips/strip-plan.ts';
import { type Cover, type CoverProgramme, writeProgramme } from './cover-programme.ts';
import type { CoverRelaxation } from './relax-cover.ts';
import { type CoverFound, searchCover } from './search-cover.ts';

/** Steps for each part, and how many patterns at most are looked at. */
export interface CoverEffort {
  readonly list: number;
  readonly search: number;
  readonly patterns: number;
}

/** Costs closer than this are one and the same. */
const ALIKE = 1e-3;

/**
 * The cheapest purchase of a cover that costs less than what is known: first among the patterns of the
 * relaxation; then, as `proveStrips` does, from the bound upwards, among all patterns and fillings that
 * a purchase so cheap can have.
 *
 * @param below cost that must be beaten
 * @returns the cheapest found, if any beats it, and a cost that no purchase is below
 */
export function proveCover(
  cover: Cover,
  relaxation: CoverRelaxation,
  asked: {
    readonly below: number;
    readonly effort: CoverEffort;
    /** Steps left for this and what comes after it; written over. */
    readonly allowance: Budget;
  },
): { readonly found?: CoverFound; readonly bound: number } {
  const { effort, allowance } = asked;
  const step = stepOf(cover);
  const apart = step === 0 ? ALIKE : step;
  const part = (most: number) => ({ steps: Math.max(0, Math.min(most, allowance.steps)) });
  const first = part(effort.search / 4);
  const budget = part(effort.search);
  const listing = part(effort.list);
  const given = first.steps + budget.steps + listing.steps;
  let bound = raiseToStep(relaxation.bound, step);
  let found: CoverFound | undefined;
  let below = asked.below;
  const look = (programme: CoverProgramme, target: number, steps: { steps: number }) => {
    allowance.steps -= (programme.columns.length * programme.needs.length) / 16;
    const result = searchCover(cover, programme, { target, apart, bound, budget: steps });
    if (result.found !== undefined) {
      found = result.found;
      below = found.cost;
    }
    return result;
  };
  look(relaxation.programme, stepBelow(below, step), first);
  if (!relaxation.isSolved) {
    allowance.steps -= given - first.steps - budget.steps - listing.steps;
    return { ...(found && { found }), bound: 0 };
  }
  let reach = Number.isFinite(below) ? Math.max(apart, (below - bound) / 8) : apart;
  while (below > bound + (step === 0 ? 2 * ALIKE : 1e-6)) {
    const target = Math.min(stepBelow(below, step), bound + raiseToStep(reach, step) - apart);
    const programme = narrow(cover, relaxation, { target, listing, most: effort.patterns });
    if (programme === undefined || allowance.steps <= 0) break;
    const { isComplete, found: cheaper } = look(programme, target, budget);
    if (!isComplete) break;
    bound = cheaper === undefined ? target + step : cheaper.cost;
    reach *= 2;
  }
  allowance.steps -= given - first.steps - budget.steps - listing.steps;
  return { ...(found && { found }), bound: Math.min(bound, below) };
}

/** The greatest cost below another that a purchase can have. */
function stepBelow(cost: number, step: number): number {
  return step === 0 ? cost - ALIKE : (Math.ceil(cost / step - 1e-6) - 1) * step;
}

/** Every cost is a whole multiple of it. */
function stepOf({ roll, sheets, leftOut = [] }: Cover): number {
  const costs = [
    ...(roll ? [roll.offer.cost] : []),
    ...sheets.map(({ offer }) => offer.cost),
    ...leftOut,
  ];
  return commonStep(costs.filter((cost) => cost > 0));
}

/** The programme over everything that a purchase of at most `target` can have; nothing where that is too much. */
function narrow(
  cover: Cover,
  { programme, prices, bound }: CoverRelaxation,
  asked: { readonly target: number; readonly listing: { steps: number }; readonly most: number },
): CoverProgramme | undefined {
  const spare = asked.target - bound + 1e-6;
  const kinds = cover.demand.length;
  const worthOf = (counts: readonly number[]) =>
    counts.reduce((sum, count, kind) => sum + count * (prices[kind] ?? 0), 0);
  const fillings = programme.fillings.filter(
    ({ sheet, filling }) =>
      (prices[kinds + cover.sheets.length + sheet] ?? 0) - worthOf(filling.counts) <= spare,
  );
  if (cover.roll === undefined) return writeProgramme(cover, { fillings, patterns: [] });
  const rate = prices[prices.length - 2] ?? 0;
  const patterns = listPatterns(cover.roll.problem, {
    prices:
      rate > 1e-9 ? prices.slice(0, kinds).map((price) => price / rate) : cover.demand.map(() => 0),
    excess: rate > 1e-9 ? spare / rate : Number.POSITIVE_INFINITY,
    most: asked.most,
    budget: asked.listing,
  });
  return patterns && writeProgramme(cover, { fillings, patterns });
}
