import { type Board, countLeft, FREE } from './board.ts';
import { listStrands } from './list-strands.ts';

/**
 * Shares prints out to strands so that as few as can be run over into another: the largest first, each
 * into the strand that it fills most nearly, and what fits into none is parted.
 *
 * @param board its free cells are filled
 */
export function packStrands(board: Board, areColumns: boolean, order: readonly number[]): void {
  const left = countLeft(board);
  const strands = listStrands(board, areColumns, { order, isPacked: true }).map((strand) =>
    strand.filter((place) => board.cells[place] === FREE),
  );
  const room = strands.map((strand) => strand.length);
  const laid: number[][] = strands.map(() => []);
  const put = (print: number, strand: number, blocks: number) => {
    laid[strand]?.push(...Array.from({ length: blocks }, () => print));
    room[strand] = (room[strand] ?? 0) - blocks;
    left[print] = (left[print] ?? 0) - blocks;
  };
  for (const print of [...order].sort((one, other) => (left[other] ?? 0) - (left[one] ?? 0))) {
    const wanted = left[print] ?? 0;
    const fitting = room.map((_, at) => at).filter((at) => (room[at] ?? 0) >= wanted);
    const best = fitting.sort((one, other) => (room[one] ?? 0) - (room[other] ?? 0))[0];
    if (best !== undefined) put(print, best, wanted);
    else for (const at of room.keys()) put(print, at, Math.min(room[at] ?? 0, left[print] ?? 0));
  }
  for (const [at, strand] of strands.entries()) {
    const own = at % 2 === 0 ? laid[at] : laid[at]?.toReversed();
    for (const [index, place] of strand.entries()) board.cells[place] = own?.[index] ?? 0;
  }
}
