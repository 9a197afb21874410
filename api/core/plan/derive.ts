import type { Derivation } from '../contract.ts';

export type Numbers = Readonly<Record<string, number>>;

/**
 * Puts a derivation together.
 *
 * @param row formula, the numbers it names, and its value
 *
 * @example
 * derive('grid.blocks', 'Plain geometry', ['columns * rows', { columns: 2, rows: 3 }, 6]) // => { path: 'grid.blocks', formula: 'columns * rows', numbers: { columns: 2, rows: 3 }, value: 6, source: 'Plain geometry' }
 */
export function derive(
  path: string,
  source: string,
  row: readonly [string, Numbers, number],
): Derivation {
  const [formula, numbers, value] = row;
  return { path, formula, numbers, value, source };
}
