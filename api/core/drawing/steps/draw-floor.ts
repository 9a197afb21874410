import { nameRow } from '../../layout/name-row.ts';
import { type Drawing, place, type Shape } from '../shape.ts';
import { drawFace } from './draw-face.ts';
import { drawLine } from './draw-line.ts';
import { type DrawnWork, readScene } from './read-scene.ts';

/** Side of a block in the drawing, and the room for names and numbers. */
const SIDE = 40;
const ROOM = 34;
/** More rows or columns than this are named in fives. */
const MANY = 24;

/**
 * Where each print goes, with the names of the rows at the left, the numbers of the columns above, and a pin
 * through the block at the top left. A letter in each block, however many there are, since it is printed in grey.
 */
export function drawFloor(answer: DrawnWork): Drawing {
  const scene = readScene(answer);
  const { columns, rows, cells } = scene;
  const size = Math.max(20, Math.max(columns, rows) * 0.9);
  const name = (x: number, y: number, text: string): Shape => ({
    ...{ kind: 'text', part: 'measure-text', fill: 'currentColor', size: place(size), text },
    ...{ x: place(x), y: place(y) },
  });
  const isNamed = (at: number, count: number) => count <= MANY || at === 0 || (at + 1) % 5 === 0;
  const room = Math.max(ROOM, size * 2);
  return {
    box: { x: -room, y: -room, width: columns * SIDE + room + 4, height: rows * SIDE + room + 4 },
    shapes: [
      ...drawFace(scene, { cells, x: 0, y: 0, side: SIDE }),
      ...cells.flatMap((_, at) =>
        isNamed(at, rows) ? [name(-room * 0.45, (at + 0.5) * SIDE, nameRow(at))] : [],
      ),
      ...Array.from({ length: columns }, (_, at) => at).flatMap((at) =>
        isNamed(at, columns) ? [name((at + 0.5) * SIDE, -room * 0.4, `${at + 1}`)] : [],
      ),
      drawLine('measure', `M${place(-room * 0.8)} ${place(-room * 0.8)}L12 12`, { breadth: 3 }),
      {
        ...drawLine('measure', `M${place(-room * 0.8)} ${place(-room * 0.8)}h0`, { breadth: 13 }),
        round: true,
      },
    ],
  };
}
