import { drawBlocks } from '#core/drawing/draw-blocks.ts';
import { type Drawing, place, type Shape } from '#core/drawing/shape.ts';
import { nameRow } from '#core/layout/name-row.ts';
import type { FloorPage } from './split-sheets.ts';

const FACE = 100;
const EDGE = 90;
const INK = '#1b2233';

/**
 * One page of the floor sheet: its blocks with their letters, rows lettered and columns numbered as in the whole quilt,
 * and a mark at the top left of the quilt where that is on this page.
 *
 * @example
 * drawFloor({ page: 0, row: 0, column: 0, cells: ['AB'] }, () => undefined).box // => { x: -90, y: -90, width: 300, height: 200 }
 */
export function drawFloor(
  { row, column, cells }: FloorPage,
  colorOf: (print: number) => string | undefined,
): Drawing {
  const columns = cells[0]?.length ?? 0;
  const frame = { cells, x: 0, y: 0, faceWidth: FACE, faceHeight: FACE };
  const blocks = drawBlocks({
    ...frame,
    colorOf,
    repeats: 2,
    hasLetters: false,
    alternating: true,
  });
  const label = (text: string, x: number, y: number): Shape => ({
    kind: 'text',
    part: 'measure-text',
    x: place(x),
    y: place(y),
    size: 44,
    text,
    fill: INK,
  });
  const write = (text: string, x: number, y: number): Shape => ({
    ...{ kind: 'text', part: 'letter', x: place(x), y: place(y), size: 56, text, fill: INK },
    rim: '#ffffff',
  });
  const middle = (at: number) => (at + 0.5) * FACE;
  const mark: Shape = {
    kind: 'path',
    part: 'cut',
    d: `M${-EDGE + 10} ${-EDGE + 10}h70l-70 70z`,
    fill: INK,
  };
  return {
    box: {
      x: -EDGE,
      y: -EDGE,
      width: columns * FACE + EDGE + 10,
      height: cells.length * FACE + EDGE + 10,
    },
    shapes: [
      ...blocks.filter(({ part }) => part !== 'quilting'),
      {
        kind: 'path',
        part: 'outline',
        d: traceGrid(columns, cells.length),
        stroke: INK,
        breadth: 3,
      },
      ...cells.flatMap((line, down) =>
        [...line].map((letter, across) => write(letter, middle(across), middle(down))),
      ),
      ...Array.from({ length: columns }, (_, at) => label(`${column + at + 1}`, middle(at), -45)),
      ...cells.map((_, at) => label(nameRow(row + at), -45, middle(at))),
      ...(row === 0 && column === 0 ? [mark] : []),
    ],
  };
}

/** The edges of the blocks: in grey the prints may run into each other. */
function traceGrid(columns: number, rows: number): string {
  const down = Array.from({ length: columns + 1 }, (_, at) => `M${at * FACE} 0v${rows * FACE}`);
  const across = Array.from({ length: rows + 1 }, (_, at) => `M0 ${at * FACE}h${columns * FACE}`);
  return [...down, ...across].join('');
}
