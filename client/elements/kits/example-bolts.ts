import type { Row } from '../../data/rows.ts';

/** Bolts of an invented shop, in inches, with what a yard costs it. */
export const EXAMPLE_BOLTS: readonly Row[] = [
  { role: 'top', id: 'Heron dot', width: '44', length: '8 yd', cost: '11.20' },
  { role: 'top', id: 'Rust check', width: '44', length: '6 yd', cost: '10.40' },
  { role: 'top', id: 'Oat sprig', width: '43', length: '7 yd', cost: '10.40' },
  { role: 'top', id: 'Moss stripe', width: '43', length: '5 yd', cost: '12.60' },
  { role: 'backing', id: 'Fog flannel', width: '42', length: '25 yd', cost: '8.90' },
];

/** Whether some row of a table is of the invented shop. */
export function holdsExample(rows: readonly Row[]): boolean {
  return rows.some(({ id }) => EXAMPLE_BOLTS.some((row) => row['id'] === id));
}
