import { settleDictionary } from '../strips/dictionary.ts';
import { fillStrip } from '../strips/fill-strip.ts';
import { readPrices, startProgramme } from '../strips/start-programme.ts';
import type { Budget, Pattern, StripProblem } from '../strips/strip-plan.ts';
import { type Cover, type CoverProgramme, writeProgramme } from './cover-programme.ts';

/** The least cost where everything could be bought and cut in fractions. */
export interface CoverRelaxation {
  /** Over all fillings, and the patterns that the roll needs for its least cost. */
  readonly programme: CoverProgramme;
  /** Of each need. */
  readonly prices: readonly number[];
  readonly bound: number;
  /** False where the budget ran out, so that nothing is proven. */
  readonly isSolved: boolean;
}

/**
 * Solves the relaxation of a cover, patterns of the roll being found as they are needed: a strip is
 * worth adding where its pieces are worth more than its height (Gilmore and Gomory, 1961).
 *
 * @param patterns to start from, which hold every kind that only the roll can give
 * @returns nothing where no purchase is enough
 */
export function relaxCover(
  cover: Cover,
  patterns: readonly Pattern[],
  budget: Budget,
): CoverRelaxation | undefined {
  const fillings = cover.sheets.flatMap((own, sheet) =>
    own.fillings.map((filling) => ({ sheet, filling })),
  );
  let pool = patterns;
  for (;;) {
    const programme = writeProgramme(cover, { fillings, patterns: pool });
    const { columns, needs } = programme;
    const dictionary = startProgramme(columns, needs);
    budget.steps -= dictionary.table.length / 16;
    const isFeasible = settleDictionary(dictionary, Number.POSITIVE_INFINITY, budget);
    if (!isFeasible && budget.steps > 0) return undefined;
    const prices = readPrices(dictionary, { names: columns.length, needs: needs.length });
    const found = cover.roll === undefined ? [] : findPatterns(cover.roll.problem, prices, budget);
    if (found.length === 0 || budget.steps <= 0) {
      const isSolved = budget.steps > 0;
      return { programme, prices, bound: isSolved ? dictionary.cost : 0, isSolved };
    }
    pool = [...pool, ...found];
  }
}

/** The strip of each level that is worth most beyond its height. */
function findPatterns(
  { levels, usable, demand }: StripProblem,
  prices: readonly number[],
  budget: Budget,
): readonly Pattern[] {
  const rate = prices[prices.length - 2] ?? 0;
  return levels.flatMap(({ height, widths }, level) => {
    const least = rate * height * (1 + 1e-9) + 1e-7;
    const strip = fillStrip(usable, { widths, worth: prices, most: demand }, { budget, least });
    return strip.counts.length > 0 ? [{ level, counts: strip.counts }] : [];
  });
}
