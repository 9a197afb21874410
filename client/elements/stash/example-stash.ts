import type { Row } from '../../data/rows.ts';

/** Cloth of an invented shop: its bolts' ends and remnants, in inches. */
export const EXAMPLE_STASH: readonly Row[] = [
  { role: 'top', id: 'Heron dot', width: '44', length: '27' },
  { role: 'top', id: 'Rust check', width: '44', length: '18' },
  { role: 'top', id: 'Oat sprig', width: '21½', length: '18', count: '3' },
  { role: 'top', id: 'Moss stripe', width: '43', length: '25' },
  { role: 'backing', id: 'Fog flannel', width: '42', length: '2½ yd' },
];

/** Whether some row of a table is of the invented shop. */
export function holdsExample(rows: readonly Row[]): boolean {
  return rows.some(({ id }) => EXAMPLE_STASH.some((row) => row['id'] === id));
}
