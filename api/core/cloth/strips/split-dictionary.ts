import type { Membership, Split } from './choose-split.ts';
import type { Dictionary } from './dictionary.ts';

/**
 * Copies with one more row: in one the sum is at least the whole number above it, in the other at most
 * the one below. A copy is left out where the first step of its repair shows that it costs more than is
 * to spare; so are free variables that would cost more, since they must be 0.
 *
 * @param spare what the cost may still grow by
 */
export function splitDictionary(
  whole: Dictionary,
  { members, value, sum }: Split,
  spare: number,
): readonly Dictionary[] {
  const dictionary = dropDear(whole, members.length, spare);
  const atMost = rowOf(dictionary, members);
  const atLeast = atMost.map((entry) => -entry);
  return [
    { row: atLeast, amount: sum - value - 1 },
    { row: atMost, amount: value - sum },
  ].flatMap(({ row, amount }) =>
    -amount * leastRate(row, dictionary.costs) > spare ? [] : [addRow(dictionary, row, amount)],
  );
}

/** What it costs at the least to raise a row by one; infinite where nothing raises it. */
function leastRate(row: Float64Array, costs: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (let column = 0; column < row.length; column += 1) {
    const entry = -(row[column] ?? 0);
    if (entry <= 1e-7) continue;
    const rate = (costs[column] ?? 0) / entry;
    if (rate < least) least = rate;
  }
  return least;
}

/** Leaves out whole variables (all but the surpluses of needs) of which even one costs too much. */
function dropDear(dictionary: Dictionary, names: number, spare: number): Dictionary {
  const { free, amounts, table, costs } = dictionary;
  const kept: number[] = [];
  for (let column = 0; column < free.length; column += 1) {
    const isPartible = (free[column] ?? 0) >= names;
    if (isPartible || (costs[column] ?? 0) <= spare) kept.push(column);
  }
  const width = kept.length;
  if (width > 0.8 * free.length) return dictionary;
  const less = new Float64Array(amounts.length * width);
  for (let row = 0; row < amounts.length; row += 1) {
    const from = row * free.length;
    const to = row * width;
    for (let at = 0; at < width; at += 1) less[to + at] = table[from + (kept[at] ?? 0)] ?? 0;
  }
  const left = new Int32Array(width);
  const added = new Float64Array(width);
  for (let at = 0; at < width; at += 1) {
    left[at] = free[kept[at] ?? 0] ?? -1;
    added[at] = costs[kept[at] ?? 0] ?? 0;
  }
  return { ...dictionary, free: left, table: less, costs: added };
}

/** What each free variable adds to the sum. */
function rowOf({ basic, free, table }: Dictionary, members: Membership): Float64Array {
  const row = new Float64Array(free.length);
  for (let column = 0; column < row.length; column += 1) {
    row[column] = members[free[column] ?? -1] ?? 0;
  }
  for (let at = 0; at < basic.length; at += 1) {
    if (members[basic[at] ?? -1] !== 1) continue;
    const start = at * row.length;
    for (let column = 0; column < row.length; column += 1) {
      row[column] = (row[column] ?? 0) - (table[start + column] ?? 0);
    }
  }
  return row;
}

function addRow(dictionary: Dictionary, row: Float64Array, amount: number): Dictionary {
  const { basic, free, amounts, table, costs, cost } = dictionary;
  const larger = {
    basic: new Int32Array(basic.length + 1).fill(-1),
    free: free.slice(),
    amounts: new Float64Array(amounts.length + 1),
    table: new Float64Array(table.length + row.length),
    costs: costs.slice(),
    cost,
  };
  larger.basic.set(basic);
  larger.amounts.set(amounts);
  larger.amounts[amounts.length] = amount;
  larger.table.set(table);
  larger.table.set(row, table.length);
  return larger;
}
