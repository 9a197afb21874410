import { fillStrip } from './fill-strip.ts';
import { type BasisColumn, pivotBasis, type Tableau } from './pivot-basis.ts';
import { startBasis } from './start-basis.ts';
import type { Budget, Pattern, StripProblem } from './strip-plan.ts';

/** The least length where strips could be cut in fractions, with prices that prove it. */
export interface Relaxation {
  /** The basis of the last step: a pattern, or the surplus of one kind. */
  readonly basis: readonly BasisColumn[];
  /** Inverse of the basis, a row for each column of it. */
  readonly inverse: readonly Float64Array[];
  /** How often each column of the basis is used. */
  readonly amounts: readonly number[];
  /** Worth of one piece of each kind, mm; no strip holds more worth than its height. */
  readonly prices: readonly number[];
  /** Proven: no plan of strips is shorter, mm. */
  readonly bound: number;
  /** False where the budget ran out: the prices still prove the bound, but the basis is not the best. */
  readonly isSolved: boolean;
}

/**
 * Solves the linear relaxation of the strip problem by column generation (Gilmore and Gomory, 1961):
 * a simplex over one row for each kind, whose entering column is the strip of most worth for its
 * height, found by `fillStrip`. The prices, scaled so that no strip holds more worth than its
 * height, give a lower bound even where the budget ran out (Farley's bound).
 *
 * @param problem every kind is wanted once or more, and fits a level
 */
export function solveRelaxation(problem: StripProblem, budget: Budget): Relaxation {
  const tableau = startBasis(problem);
  const pool = tableau.basis.flatMap(({ pattern }) => (pattern ? [bare(problem, pattern)] : []));
  for (;;) {
    const prices = priceKinds(problem, tableau);
    const known = findKnown(pool, prices);
    if (known !== undefined && budget.steps > 0) {
      budget.steps -= 1 + pool.length / 8 + problem.demand.length ** 2 / 32;
      pivotBasis(tableau, known);
      continue;
    }
    const { patterns, excess } = findPatterns(problem, prices, budget);
    if (patterns.length === 0 || budget.steps <= 0) {
      return finish(problem, tableau, { prices, excess, isSolved: budget.steps > 0 });
    }
    pool.push(...patterns.map((pattern) => bare(problem, pattern)));
  }
}

function priceKinds(problem: StripProblem, { basis, inverse }: Tableau): readonly number[] {
  const prices = problem.demand.map(() => 0);
  for (let row = 0; row < basis.length; row += 1) {
    const pattern = basis[row]?.pattern;
    const height = pattern === undefined ? 0 : (problem.levels[pattern.level]?.height ?? 0);
    const line = inverse[row];
    if (height === 0 || line === undefined) continue;
    for (let kind = 0; kind < prices.length; kind += 1) {
      prices[kind] = (prices[kind] ?? 0) + height * (line[kind] ?? 0);
    }
  }
  return prices;
}

/** A pattern with the kinds that are in it alone: most are not. */
interface BarePattern {
  readonly pattern: Pattern;
  readonly height: number;
  readonly kinds: readonly number[];
  readonly counts: readonly number[];
}

function bare({ levels }: StripProblem, pattern: Pattern): BarePattern {
  const kinds: number[] = [];
  const counts: number[] = [];
  for (let kind = 0; kind < pattern.counts.length; kind += 1) {
    const count = pattern.counts[kind] ?? 0;
    if (count === 0) continue;
    kinds.push(kind);
    counts.push(count);
  }
  return { pattern, height: levels[pattern.level]?.height ?? 0, kinds, counts };
}

/** The column at hand that gains most: a pattern worth more than its height, or a piece of less than no worth. */
function findKnown(
  pool: readonly BarePattern[],
  prices: readonly number[],
): BasisColumn | undefined {
  let gain = 1e-9;
  let found: BasisColumn | undefined;
  for (let kind = 0; kind < prices.length; kind += 1) {
    const price = prices[kind] ?? 0;
    if (-price <= gain) continue;
    gain = -price;
    found = { surplus: kind };
  }
  for (const { pattern, height, kinds, counts } of pool) {
    let own = -height;
    for (let at = 0; at < kinds.length; at += 1) {
      own += (prices[kinds[at] ?? 0] ?? 0) * (counts[at] ?? 0);
    }
    if (own <= Math.max(gain, 1e-9 * height)) continue;
    gain = own;
    found = { pattern };
  }
  return found;
}

/** The strip of each level that is worth most beyond its height, where one is. */
function findPatterns(
  { levels, usable, demand }: StripProblem,
  prices: readonly number[],
  budget: Budget,
): { readonly patterns: readonly Pattern[]; readonly excess: number } {
  const patterns: Pattern[] = [];
  let excess = 1;
  for (const [level, { height, widths }] of levels.entries()) {
    const least = height * (1 + 1e-9);
    const strip = fillStrip(usable, { widths, worth: prices, most: demand }, { budget, least });
    excess = Math.max(excess, strip.ceiling / height);
    if (strip.counts.length > 0) patterns.push({ level, counts: strip.counts });
  }
  return { patterns, excess };
}

function finish(
  { demand }: StripProblem,
  { basis, inverse, amounts }: Tableau,
  found: Pick<Relaxation, 'prices' | 'isSolved'> & { readonly excess: number },
): Relaxation {
  const prices = found.prices.map((price) => Math.max(0, price) / found.excess);
  const bound = demand.reduce((sum, wanted, kind) => sum + wanted * (prices[kind] ?? 0), 0);
  return { basis, inverse, amounts, prices, bound, isSolved: found.isSolved };
}
