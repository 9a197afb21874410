import type { Board } from './board.ts';

/** The rows of a board, or its columns: the cells of each. */
export function listLines({ task, stride }: Board, areColumns: boolean): readonly number[][] {
  const { columns, rows } = task.grid;
  const [many, long] = areColumns ? [columns, rows] : [rows, columns];
  return Array.from({ length: many }, (_, line) =>
    Array.from({ length: long }, (_, at) =>
      areColumns ? (at + 1) * stride + line + 1 : (line + 1) * stride + at + 1,
    ),
  );
}
