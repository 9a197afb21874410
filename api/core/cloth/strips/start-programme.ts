import type { Dictionary } from './dictionary.ts';

/** A variable that is 0 or more: what one of it costs, and what it gives to each need. */
export interface ProgrammeColumn {
  /** 0 or more. */
  readonly cost: number;
  readonly gives: readonly number[];
}

/**
 * The linear programme "meet every need at the least cost", with nothing taken yet: to be settled
 * by the dual simplex, since no cost is below 0.
 *
 * @param needs the least that must be given of each; below 0 for what there is to use up
 * @returns columns have the names 0 and on, what is given beyond each need the names after them
 */
export function startProgramme(
  columns: readonly ProgrammeColumn[],
  needs: readonly number[],
): Dictionary {
  const width = columns.length;
  const table = new Float64Array(width * needs.length);
  for (const [column, { gives }] of columns.entries()) {
    for (let row = 0; row < needs.length; row += 1) {
      table[row * width + column] = -(gives[row] ?? 0);
    }
  }
  return {
    basic: Int32Array.from(needs, (_, row) => width + row),
    free: Int32Array.from(columns, (_, column) => column),
    amounts: Float64Array.from(needs, (need) => -need),
    table,
    costs: Float64Array.from(columns, ({ cost }) => cost),
    cost: 0,
  };
}

/**
 * The price of each need in a settled programme: what one more of it would cost.
 *
 * @param names number of columns it was started with
 */
export function readPrices(
  { free, costs }: Dictionary,
  { names, needs }: { readonly names: number; readonly needs: number },
): readonly number[] {
  const prices = Array.from({ length: needs }, () => 0);
  for (const [column, name] of free.entries()) {
    if (name >= names && name < names + needs)
      prices[name - names] = Math.max(0, costs[column] ?? 0);
  }
  return prices;
}
