import type { Pattern } from './strip-plan.ts';

/** A column of the basis: a pattern, or the surplus of one kind. */
export type BasisColumn =
  | { readonly pattern: Pattern; readonly surplus?: never }
  | { readonly pattern?: never; readonly surplus: number };

/** A basis, its inverse and its solution. */
export interface Tableau {
  readonly basis: BasisColumn[];
  readonly inverse: Float64Array[];
  readonly amounts: number[];
}

/**
 * One step of the simplex: a column enters the basis, for the one that it drives out first.
 */
export function pivotBasis({ basis, inverse, amounts }: Tableau, column: BasisColumn): void {
  const direction = inverse.map((row) => {
    if (column.pattern === undefined) return -(row[column.surplus] ?? 0);
    const { counts } = column.pattern;
    let sum = 0;
    for (let kind = 0; kind < row.length; kind += 1) sum += (row[kind] ?? 0) * (counts[kind] ?? 0);
    return sum;
  });
  const leaving = chooseLeaving(direction, amounts);
  const line = inverse[leaving];
  if (line === undefined) return;
  const scale = direction[leaving] ?? 1;
  for (let kind = 0; kind < line.length; kind += 1) line[kind] = (line[kind] ?? 0) / scale;
  const amount = (amounts[leaving] ?? 0) / scale;
  for (const [row, entry] of direction.entries()) {
    const other = inverse[row];
    if (row === leaving || other === undefined || entry === 0) continue;
    for (let kind = 0; kind < line.length; kind += 1) {
      other[kind] = (other[kind] ?? 0) - entry * (line[kind] ?? 0);
    }
    amounts[row] = Math.max(0, (amounts[row] ?? 0) - entry * amount);
  }
  amounts[leaving] = amount;
  basis[leaving] = column;
}

function chooseLeaving(direction: readonly number[], amounts: readonly number[]): number {
  let leaving = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const [row, entry] of direction.entries()) {
    if (entry <= 1e-9) continue;
    const ratio = (amounts[row] ?? 0) / entry;
    if (ratio >= least) continue;
    least = ratio;
    leaving = row;
  }
  return leaving;
}
