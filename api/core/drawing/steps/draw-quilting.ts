import { place, type Shape } from '../shape.ts';
import { traceBox } from '../trace-box.ts';
import { drawFace } from './draw-face.ts';
import { drawLine } from './draw-line.ts';
import { INK, type StepScene } from './step-scene.ts';

const SIDE = 84;
const GAP = 12;

/**
 * Blocks in a chain, stitched from corner to corner along one diagonal or along both; the thread goes on
 * from block to block where they are chained.
 *
 * @param isSecond the other diagonal is sewn, over the first
 */
export function drawQuilting(scene: StepScene, isSecond: boolean): readonly Shape[] {
  const letters = [...scene.cells.join('')].slice(0, 3);
  const left = 150 - (letters.length * SIDE + (letters.length - 1) * GAP) / 2;
  const top = 100 - SIDE / 2;
  const places = letters.map((_, at) => left + at * (SIDE + GAP));
  const first = places.map((x) => `M${place(x)} ${top}l${SIDE} ${SIDE}`);
  const second = places.map((x) => `M${place(x)} ${top + SIDE}l${SIDE} ${-SIDE}`);
  const now = isSecond ? second : first;
  const [from, to] = isSecond ? [0, SIDE] : [SIDE, 0];
  const links = places
    .slice(1)
    .map((x) => `M${place(x - GAP)} ${top + from}L${place(x)} ${top + to}`);
  const faces = letters.flatMap((letter, at) =>
    drawFace(scene, { cells: [letter], x: places[at] ?? 0, y: top, side: SIDE }),
  );
  return [
    ...faces.filter(({ kind }) => kind === 'path'),
    drawLine(
      'outline',
      places.map((x) => traceBox({ x, y: top, width: SIDE, height: SIDE })).join(''),
      { breadth: 1.4, stroke: INK },
    ),
    ...(isSecond
      ? [drawLine('quilting', first.join(''), { breadth: 1.6, dash: '5 4', stroke: INK })]
      : []),
    drawLine('quilting', now.join(''), { breadth: 3.2, dash: '8 4', stroke: INK }),
    ...(scene.chained && links.length > 0
      ? [drawLine('quilting', links.join(''), { breadth: 1.6 })]
      : []),
    ...faces.filter(({ kind }) => kind === 'text'),
  ];
}
