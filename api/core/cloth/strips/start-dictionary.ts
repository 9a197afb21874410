import type { Dictionary } from './dictionary.ts';
import type { Relaxation } from './solve-relaxation.ts';
import type { Pattern, StripProblem } from './strip-plan.ts';

/**
 * The relaxation written out over all patterns, so that whole numbers can be asked of it.
 *
 * @param patterns those of the basis last, in its order; they have the names 0 and on, and the
 * surpluses of the kinds the names after them
 */
export function startDictionary(
  { demand, levels }: StripProblem,
  { basis, inverse, amounts, prices, bound }: Relaxation,
  patterns: readonly Pattern[],
): Dictionary {
  const names = patterns.length;
  const own = names - basis.filter(({ pattern }) => pattern !== undefined).length;
  const surplus = new Set(basis.map((column) => column.surplus));
  let next = own;
  const basic = basis.map(({ pattern, surplus: kind }) =>
    pattern === undefined ? names + kind : next++,
  );
  const free = [
    ...Array.from({ length: own }, (_, name) => name),
    ...[...demand.keys()].filter((kind) => !surplus.has(kind)).map((kind) => names + kind),
  ];
  const columns = free.map((name): Column => {
    const pattern = patterns[name];
    if (pattern === undefined)
      return { height: 0, counts: demand.map((_, kind) => (kind === name - names ? -1 : 0)) };
    return { height: levels[pattern.level]?.height ?? 0, counts: pattern.counts };
  });
  return {
    basic: Int32Array.from(basic),
    free: Int32Array.from(free),
    amounts: Float64Array.from(amounts),
    table: writeTable(inverse, columns),
    costs: Float64Array.from(columns, ({ height, counts }) =>
      Math.max(0, height - dot(prices, counts)),
    ),
    cost: bound,
  };
}

interface Column {
  readonly height: number;
  readonly counts: readonly number[];
}

function writeTable(inverse: readonly Float64Array[], columns: readonly Column[]): Float64Array {
  const table = new Float64Array(inverse.length * columns.length);
  for (const [row, line] of inverse.entries()) {
    for (let at = 0; at < columns.length; at += 1) {
      table[row * columns.length + at] = dot(line, columns[at]?.counts ?? []);
    }
  }
  return table;
}

function dot(line: ArrayLike<number>, counts: readonly number[]): number {
  let sum = 0;
  for (let kind = 0; kind < counts.length; kind += 1)
    sum += (line[kind] ?? 0) * (counts[kind] ?? 0);
  return sum;
}
