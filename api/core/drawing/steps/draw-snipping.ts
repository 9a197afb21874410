import { place, type Shape } from '../shape.ts';
import { traceBox } from '../trace-box.ts';
import { drawLabel, drawLine } from './draw-line.ts';
import { sayMeasure } from './say-measure.ts';
import { FLANNEL, INK, type StepScene } from './step-scene.ts';

/** Snips shown along the edge. */
const SNIPS = 7;
const TOP = 24;
const LEFT = 76;

/**
 * The edge of a block true to scale: snips of their depth at their pitch, the stitching at the allowance, and
 * what is left between the two. Depth is told at the left, the clearance at the right.
 */
export function drawSnipping({ seam, snipDepth, snipPitch, unit }: StepScene): readonly Shape[] {
  const scale = Math.min(148 / ((SNIPS + 1) * snipPitch), 126 / seam);
  const width = (SNIPS + 1) * snipPitch * scale;
  const [deep, stitching] = [TOP + snipDepth * scale, TOP + seam * scale];
  const right = LEFT + width;
  const snips = Array.from(
    { length: SNIPS },
    (_, at) => `M${place(LEFT + (at + 1) * snipPitch * scale)} ${TOP}V${place(deep)}`,
  );
  const cloth = { x: LEFT, y: TOP, width, height: seam * scale + 32 };
  const measure = { breadth: 1.4 };
  return [
    { kind: 'path', part: 'piece', d: traceBox(cloth), fill: FLANNEL, stroke: INK, breadth: 1.6 },
    drawLine('snip', snips.join(''), { breadth: 2.6, stroke: INK }),
    drawLine('quilting', `M${LEFT} ${place(stitching)}H${place(right)}`, {
      ...{ breadth: 3, dash: '8 4', stroke: INK },
    }),
    drawLine('measure', traceMeasure(LEFT - 8, TOP, deep), measure),
    drawLine('measure', traceMeasure(right + 8, deep, stitching), measure),
    drawLabel(LEFT - 44, (TOP + deep) / 2, sayMeasure(snipDepth, unit)),
    drawLabel(right + 44, (deep + stitching) / 2, sayMeasure(seam - snipDepth, unit)),
  ];
}

/** A dimension line from top to bottom, a tick at each end. */
function traceMeasure(x: number, from: number, to: number): string {
  return `M${place(x - 5)} ${place(from)}h10m-5 0V${place(to)}m-5 0h10`;
}
