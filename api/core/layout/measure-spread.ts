import { letterOf } from './letter-of.ts';

/** How one print lies over a quilt, in blocks. */
export interface Spread {
  readonly count: number;
  /** The most by which any row has more or less than the print's fair share. */
  readonly rows: number;
  readonly columns: number;
  /** From the middle of the print's blocks to the middle of the quilt; absent without blocks. */
  readonly centre?: number;
}

/**
 * How evenly one print is spread: its blocks in each row against count/rows, in each column against
 * count/columns, and the middle of its blocks against that of the quilt.
 *
 * @param cells a string a row, a letter a block
 * @param print 0 the first
 *
 * @example
 * measureSpread(['AB', 'BA'], 0) // => { count: 2, rows: 0, columns: 0, centre: 0 }
 */
export function measureSpread(cells: readonly string[], print: number): Spread {
  const letter = letterOf(print);
  const columns = cells[0]?.length ?? 0;
  const inRow = cells.map((row) => row.split(letter).length - 1);
  const inColumn = Array.from(
    { length: columns },
    (_, column) => cells.filter((row) => row[column] === letter).length,
  );
  const count = inRow.reduce((sum, blocks) => sum + blocks, 0);
  const spread = { count, rows: farthest(inRow, count), columns: farthest(inColumn, count) };
  if (count === 0) return spread;
  return { ...spread, centre: Math.hypot(offset(inRow, count), offset(inColumn, count)) };
}

function farthest(blocks: readonly number[], count: number): number {
  return Math.max(...blocks.map((own) => Math.abs(own - count / blocks.length)));
}

function offset(blocks: readonly number[], count: number): number {
  const middle = blocks.reduce((sum, own, at) => sum + own * at, 0) / count;
  return middle - (blocks.length - 1) / 2;
}
