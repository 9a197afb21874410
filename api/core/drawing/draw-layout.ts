import { nameRow } from '../layout/name-row.ts';
import { drawBlocks } from './draw-blocks.ts';
import { type Drawing, place, type TextShape } from './shape.ts';

/** As much of a layout as its drawing needs: any layout answer will do. */
export interface DrawnLayout {
  readonly cells: readonly string[];
  readonly input: { readonly prints: readonly { readonly color?: string }[] };
}

/** Side of a face in the drawing; a layout knows no sizes. */
const FACE = 100;
/** More blocks than this are too small on any screen for letters and fine figures. */
const FEW = 150;
/** Of more rows or columns than this every fifth is named. */
const MANY = 20;

/**
 * A layout as blocks side by side, with the letters of rows and the numbers of columns at its edges.
 *
 * @example
 * drawLayout({ cells: ['AB', 'BA'], input: { prints: [{}, {}] } }).box // => { x: -70, y: -70, width: 290, height: 290 }
 */
export function drawLayout({ cells, input }: DrawnLayout): Drawing {
  const columns = cells[0]?.length ?? 0;
  const rows = cells.length;
  const size = 36 + Math.max(columns, rows);
  const margin = Math.round(1.6 * size) + 9;
  return {
    box: {
      x: -margin,
      y: -margin,
      width: columns * FACE + margin + 20,
      height: rows * FACE + margin + 20,
    },
    shapes: [
      ...drawBlocks({
        ...{ cells, x: 0, y: 0, faceWidth: FACE, faceHeight: FACE },
        colorOf: (print) => input.prints[print]?.color,
        ...(columns * rows > FEW
          ? { repeats: 1, hasLetters: false }
          : { repeats: 3, hasLetters: true }),
        alternating: true,
      }),
      ...nameLines(columns, { size, name: (at) => `${at + 1}` }, (middle) => ({
        x: middle,
        y: place(-size),
      })),
      ...nameLines(rows, { size, name: nameRow }, (middle) => ({ x: place(-size), y: middle })),
    ],
  };
}

function nameLines(
  lines: number,
  { size, name }: { readonly size: number; readonly name: (at: number) => string },
  put: (middle: number) => { readonly x: number; readonly y: number },
): readonly TextShape[] {
  const numbers = Array.from({ length: lines }, (_, at) => at + 1);
  return numbers
    .filter((number) => lines <= MANY || number === 1 || number % 5 === 0)
    .map((number) => ({
      kind: 'text',
      part: 'measure-text',
      ...put((number - 0.5) * FACE),
      size,
      text: name(number - 1),
      fill: 'currentColor',
    }));
}
