import type { PlanOption, Unit } from '../contract.ts';
import { toMillimetres } from '../length.ts';
import { findPrintLook } from './find-print-look.ts';
import { type Drawing, place, type Shape } from './shape.ts';
import { traceBox } from './trace-box.ts';

/** How much of a block's side shows between its fringes, as a picture the size of a stamp needs it. */
const SHOWN = 0.84;

/**
 * A small drawing of another plan, washed: flannel with the faces on it, prints in a plain repeat.
 *
 * @param option the plan; its sizes are in `unit`.
 * @param cloth the unit, and the prints' own colours in order, undefined where a print has none.
 */
export function drawThumbnail(
  option: PlanOption,
  cloth: { readonly unit: Unit; readonly colors: readonly (string | undefined)[] },
): Drawing {
  const width = toMillimetres(option.washed.width, cloth.unit);
  const height = toMillimetres(option.washed.height, cloth.unit);
  const step = { x: width / option.columns, y: height / option.rows };
  const prints = cloth.colors.length;
  const faces = Array.from({ length: option.columns * option.rows }, (_, cell) => {
    const column = cell % option.columns;
    const row = Math.floor(cell / option.columns);
    const d = traceBox({
      x: (column + (1 - SHOWN) / 2) * step.x,
      y: (row + (1 - SHOWN) / 2) * step.y,
      width: step.x * SHOWN,
      height: step.y * SHOWN,
    });
    return { d, print: (column + 2 * row) % prints };
  });
  const box = { x: 0, y: 0, width: place(width), height: place(height) };
  const ground: Shape = { kind: 'path', part: 'fringe', d: traceBox(box), fill: '#d8c9ad' };
  const cloths = cloth.colors.map(
    (color, print): Shape => ({
      kind: 'path',
      part: 'face',
      print,
      d: faces.map((face) => (face.print === print ? face.d : '')).join(''),
      fill: findPrintLook(print, color).ground,
    }),
  );
  return { box, shapes: [ground, ...cloths] };
}
