/**
 * A linear programme solved for its basic variables: basic = amounts − table · free, at a cost so far,
 * with what each free variable would add to it.
 */
export interface Dictionary {
  /** Names of the basic variables, a row each. */
  readonly basic: Int32Array;
  /** Names of the free variables, a column each. */
  readonly free: Int32Array;
  readonly amounts: Float64Array;
  /** Row by row. */
  readonly table: Float64Array;
  readonly costs: Float64Array;
  cost: number;
}

/** Numbers smaller than this are noise. */
const NOISE = 1e-9;

/**
 * The dual simplex (Lemke, 1954): makes every basic variable 0 or more, keeping every cost 0 or more.
 *
 * @param most where the least cost is proven above this, the work stops
 * @param budget a step for some thirty entries of the table worked upon
 * @returns whether there is a solution of a cost of at most `most`
 */
export function settleDictionary(
  dictionary: Dictionary,
  most: number,
  budget: { steps: number },
): boolean {
  for (;;) {
    if (dictionary.cost > most) return false;
    const row = findShort(dictionary.amounts);
    if (row === undefined) return true;
    budget.steps -= 1 + dictionary.table.length / 32;
    if (budget.steps <= 0) return false;
    const column = findEntering(dictionary, row);
    if (column === undefined) return false;
    exchange(dictionary, row, column);
  }
}

/** The row that is most below 0. */
function findShort(amounts: Float64Array): number | undefined {
  let least = -1e-7;
  let found: number | undefined;
  for (let row = 0; row < amounts.length; row += 1) {
    const amount = amounts[row] ?? 0;
    if (amount >= least) continue;
    least = amount;
    found = row;
  }
  return found;
}

/** The free variable that mends a row at the least cost; among equals, the one of the largest entry. */
function findEntering({ table, costs }: Dictionary, row: number): number | undefined {
  const start = row * costs.length;
  let found: number | undefined;
  let least = Number.POSITIVE_INFINITY;
  let largest = 0;
  for (let column = 0; column < costs.length; column += 1) {
    const entry = -(table[start + column] ?? 0);
    if (entry <= 1e-7) continue;
    const ratio = (costs[column] ?? 0) / entry;
    if (ratio > least + NOISE || (ratio > least - NOISE && entry <= largest)) continue;
    if (ratio < least) least = ratio;
    largest = entry;
    found = column;
  }
  return found;
}

/** A basic and a free variable change places. */
function exchange(dictionary: Dictionary, row: number, column: number): void {
  const { basic, free, amounts, table, costs } = dictionary;
  const width = costs.length;
  const line = table.subarray(row * width, (row + 1) * width);
  const scale = 1 / (line[column] ?? 1);
  for (let at = 0; at < width; at += 1) line[at] = (line[at] ?? 0) * scale;
  line[column] = scale;
  const amount = (amounts[row] ?? 0) * scale;
  amounts[row] = amount;
  for (let other = 0; other < amounts.length; other += 1) {
    const factor = table[other * width + column] ?? 0;
    if (other === row || factor === 0) continue;
    table[other * width + column] = 0;
    subtract(table, line, { start: other * width, factor });
    amounts[other] = (amounts[other] ?? 0) - factor * amount;
  }
  const factor = costs[column] ?? 0;
  costs[column] = 0;
  subtract(costs, line, { start: 0, factor });
  dictionary.cost += factor * amount;
  const name = basic[row] ?? 0;
  basic[row] = free[column] ?? 0;
  free[column] = name;
}

function subtract(
  target: Float64Array,
  line: Float64Array,
  { start, factor }: { readonly start: number; readonly factor: number },
): void {
  for (let at = 0; at < line.length; at += 1) {
    target[start + at] = (target[start + at] ?? 0) - factor * (line[at] ?? 0);
  }
}
