import { place, type Shape } from '../shape.ts';
import { drawFace } from './draw-face.ts';
import { drawLine } from './draw-line.ts';
import { FLANNEL, INK, type StepScene } from './step-scene.ts';

const SIDE = 104;
/** Degrees that every other block is turned. */
const TURN = 9;

/**
 * A stack of blocks, every other one turned a little; of the topmost all layers show.
 */
export function drawStacking(scene: StepScene): readonly Shape[] {
  const [x, y] = [96, 34];
  const below = Array.from({ length: 4 }, (_, at) => {
    const down = (4 - at) * 9;
    return traceTurned(x + SIDE / 2, y + SIDE / 2 + down, at % 2 === 0 ? TURN : 0);
  });
  const layers = Array.from({ length: scene.layers - 1 }, (_, at) => {
    const off = (scene.layers - 1 - at) * 7;
    return traceTurned(x + SIDE / 2 + off, y + SIDE / 2 + off, 0);
  });
  const sheet = { kind: 'path', part: 'piece', fill: FLANNEL, stroke: INK, breadth: 1.6 } as const;
  return [
    ...below.map((d) => ({ ...sheet, d })),
    ...layers.map((d) => ({ ...sheet, d })),
    ...drawFace(scene, { cells: [scene.cells[0]?.[0] ?? 'A'], x, y, side: SIDE }),
    drawLine('outline', traceTurned(x + SIDE / 2, y + SIDE / 2, 0), { breadth: 1.6, stroke: INK }),
  ];
}

/** A square about its middle, turned by some degrees. */
function traceTurned(x: number, y: number, degrees: number): string {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [(SIDE / 2) * Math.cos(angle), (SIDE / 2) * Math.sin(angle)];
  const corners = [
    [x - cos + sin, y - sin - cos],
    [x + cos + sin, y + sin - cos],
    [x + cos - sin, y + sin + cos],
    [x - cos - sin, y - sin + cos],
  ];
  return `M${corners.map(([left = 0, top = 0]) => `${place(left)} ${place(top)}`).join('L')}z`;
}
