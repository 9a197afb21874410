import { commonStep, raiseToStep } from './common-step.ts';
import { type Level, listLevels, type PieceKind } from './list-levels.ts';
import { pileStrips } from './pile-strips.ts';
import { proveStrips } from './prove-strips.ts';
import { roundStrips } from './round-strips.ts';
import { shortenStrips } from './shorten-strips.ts';
import { solveRelaxation } from './solve-relaxation.ts';
import { spendSteps } from './spend-steps.ts';
import { type Budget, lengthOf, type StripList, type StripProblem } from './strip-plan.ts';

/** The shortest plan of strips found, and how short any could be. */
export interface LeastStrips {
  readonly levels: readonly Level[];
  readonly strips: StripList;
  /** Σ height of the strips, mm. */
  readonly length: number;
  /** Proven: no plan of strips is shorter, mm; the length itself where that is proven least. */
  readonly bound: number;
  readonly optimal: boolean;
}

/** What one order may take, where nobody says less. */
export const USUAL_STEPS = 600_000;

/** Counted, never timed, so that equal input gives equal output on any machine. */
const STEPS = { relax: 100_000, round: 20_000 } as const;
const PROOF = { list: 40_000, search: 80_000, patterns: 1500 } as const;
const SHORTEN = { search: 5000, patterns: 150 } as const;

/**
 * The least length of roll over all plans of strips right across it, each as tall as its tallest
 * piece, for several sizes of piece; proven where the search ends within its steps.
 *
 * The relaxation gives prices and a bound. Plans are rounded from it and piled strip by strip;
 * `proveStrips` closes the gap to the bound, or `shortenStrips` narrows it.
 *
 * @param kinds each fits the roll one way at least
 * @param usable width that can be cut, mm
 * @param allowance steps that are left for this and whatever comes after it; written over
 *
 * @example
 * leastStrips([{ across: 30, along: 20, count: 3, canTurn: false }, { across: 40, along: 25, count: 2, canTurn: true }], 100).length // => 45
 */
export function leastStrips(
  kinds: readonly PieceKind[],
  usable: number,
  allowance: Budget = { steps: USUAL_STEPS },
): LeastStrips {
  const levels = listLevels(kinds, usable);
  const problem = { usable, levels, demand: kinds.map((kind) => kind.count) };
  const relaxation = spendSteps(allowance, STEPS.relax, (budget) =>
    solveRelaxation(problem, budget),
  );
  const step = commonStep(levels.map((level) => level.height));
  const bound = raiseToStep(relaxation.bound, step);
  const round = (work: (budget: Budget) => StripList) => spendSteps(allowance, STEPS.round, work);
  const strips = shortest(problem, [
    round((budget) => roundStrips(problem, relaxation, budget)),
    round((budget) => pileStrips(problem, relaxation.prices, budget)),
    round((budget) => pileStrips(problem, areasOf(kinds), budget)),
  ]);
  const first = { strips, length: lengthOf(levels, strips), bound };
  if (!relaxation.isSolved || isProven(first)) return finish(levels, first);
  const proof = proveStrips(problem, relaxation, { from: first, step, effort: PROOF, allowance });
  if (isProven(proof)) return finish(levels, proof);
  return finish(
    levels,
    shortenStrips(problem, relaxation, { from: proof, effort: SHORTEN, allowance }),
  );
}

type Plan = Pick<LeastStrips, 'strips' | 'length' | 'bound'>;

/** To two thousandths of a millimetre, which nobody cuts. */
function isProven({ length, bound }: Plan): boolean {
  return length <= bound + 2e-3;
}

function finish(levels: readonly Level[], plan: Plan): LeastStrips {
  const optimal = isProven(plan);
  return { levels, ...plan, bound: optimal ? plan.length : plan.bound, optimal };
}

function shortest({ levels }: StripProblem, plans: readonly StripList[]): StripList {
  return plans.reduce((one, other) =>
    lengthOf(levels, other) < lengthOf(levels, one) - 1e-9 ? other : one,
  );
}

function areasOf(kinds: readonly PieceKind[]): readonly number[] {
  return kinds.map((kind) => kind.across * kind.along);
}
