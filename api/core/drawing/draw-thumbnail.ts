import type { Pair } from '../contract.ts';
import { type DrawnPlan, drawQuilt } from './draw-quilt.ts';
import type { Drawing } from './shape.ts';

/** As much of another plan as its picture needs. */
export interface DrawnOption {
  readonly columns: number;
  readonly rows: number;
  readonly washed: Pair;
}

/**
 * A small drawing of another plan, washed: its faces and its seams to scale, prints in a plain repeat.
 *
 * @param option the plan; its sizes are in the unit of the answer.
 * @param answer the plan that it stands beside, for unit, seam and prints.
 */
export function drawThumbnail({ columns, rows, washed }: DrawnOption, answer: DrawnPlan): Drawing {
  const prints = answer.input.layers.find(({ role }) => role === 'top')?.prints.length ?? 1;
  const cells = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) =>
      String.fromCharCode(65 + ((column + 2 * row) % prints)),
    ).join(''),
  );
  const size = { sewn: washed, washed };
  const { box, shapes } = drawQuilt(
    { ...answer, grid: { columns, rows }, size, layout: { cells } },
    'sewn',
  );
  return { box, shapes: shapes.filter(({ part }) => part === 'face' || part === 'snip') };
}
