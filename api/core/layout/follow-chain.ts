import type { Board } from './board.ts';

/**
 * A Kempe chain: all cells of two prints that hang together by touching. When every cell of it changes
 * to the other of the two prints, as many pairs touch as before.
 *
 * @param start a cell of the chain
 * @param other the print beside that of the start
 * @param seen cells of the chain are marked in it
 * @returns the cells of the chain
 */
export function followChain(
  board: Board,
  start: number,
  other: number,
  seen: Uint8Array,
): readonly number[] {
  const { cells, near } = board;
  const own = cells[start] ?? 0;
  const chain = [start];
  seen[start] = 1;
  for (let at = 0; at < chain.length; at += 1) {
    const from = chain[at] ?? 0;
    for (let way = 0; way < near.length; way += 1) {
      const cell = from + (near[way] ?? 0);
      const print = cells[cell];
      if (seen[cell] === 1 || (print !== own && print !== other)) continue;
      seen[cell] = 1;
      chain.push(cell);
    }
  }
  return chain;
}
