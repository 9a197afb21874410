import { place, type Shape } from '../shape.ts';
import { drawFace } from './draw-face.ts';
import { drawLine } from './draw-line.ts';
import type { StepScene } from './step-scene.ts';

/** Blocks larger than this are none the clearer. */
const MOST = 62;

/**
 * Two rows to be joined: the middle marked, and the ways from it outwards.
 */
export function drawRows(scene: StepScene): readonly Shape[] {
  const { columns, cells, middle } = scene;
  const side = Math.min(276 / columns, MOST);
  const left = 150 - (columns * side) / 2;
  const gap = 26;
  const [upper, lower] = [100 - gap / 2 - side, 100 + gap / 2];
  const centre = left + ((middle.from + middle.to - 1) / 2) * side;
  const reach = (columns * side) / 2 - 6;
  const arrow = (way: number) =>
    `M${place(centre + way * 9)} 100h${place(way * (reach - 9))}m${-way * 9} -6l${way * 9} 6l${-way * 9} 6`;
  const mark = `M${place(centre)} ${place(upper - 14)}V${place(lower + side + 14)}`;
  return [
    ...drawFace(scene, { cells: cells.slice(0, 1), x: left, y: upper, side }),
    ...drawFace(scene, { cells: cells.slice(1, 2), x: left, y: lower, side }),
    drawLine('measure', mark, { breadth: 2.6 }),
    ...(reach > 20 ? [drawLine('measure', arrow(-1) + arrow(1), { breadth: 2.6 })] : []),
  ];
}
