import type { LayoutTask } from '#core/layout/board.ts';
import { listJoins } from '#core/layout/list-joins.ts';
import { type Highs, solveModel } from './solve-model.ts';

/**
 * The fewest touching pairs as a whole-number model: one variable for each print on each cell, one for
 * each pair of neighbours that is 1 at least where both show one print.
 */
export function fewestByModel(highs: Highs, task: LayoutTask): number | undefined {
  const { columns, rows } = task.grid;
  const cells = columns * rows;
  const { pairs } = listJoins(task.grid, task.touch);
  const lays = task.counts.length * cells;
  const at = (print: number, cell: number) => print * cells + cell;
  const row = (least: number, names: readonly number[], sign = 1) => {
    const terms = Array.from({ length: lays + pairs.length }, () => 0);
    for (const name of names) terms[name] = sign;
    return { terms, least };
  };
  const exactly = (number: number, names: readonly number[]) => [
    row(number, names),
    row(-number, names, -1),
  ];
  const all = [...Array(cells).keys()];
  const prints = [...task.counts.keys()];
  const pinned = (task.fixed ?? []).join('');
  return solveModel(highs, {
    costs: Array.from({ length: lays + pairs.length }, (_, name) => (name < lays ? 0 : 1)),
    rows: [
      ...all.flatMap((cell) =>
        exactly(
          1,
          prints.map((print) => at(print, cell)),
        ),
      ),
      ...prints.flatMap((print) =>
        exactly(
          task.counts[print] ?? 0,
          all.map((cell) => at(print, cell)),
        ),
      ),
      ...[...pinned].flatMap((letter, cell) =>
        letter === '.' ? [] : [row(1, [at(letter.charCodeAt(0) - 65, cell)])],
      ),
      ...pairs.flatMap(([one, other], pair) =>
        prints.map((print) => {
          const { terms } = row(0, [at(print, one), at(print, other)], -1);
          terms[lays + pair] = 1;
          return { terms, least: -1 };
        }),
      ),
    ],
    seconds: 20,
  });
}
