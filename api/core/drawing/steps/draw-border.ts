import { place, type Shape } from '../shape.ts';
import { traceBox } from '../trace-box.ts';
import { drawLabel, drawLine } from './draw-line.ts';
import { sayMeasure } from './say-measure.ts';
import { FLANNEL, INK, type StepScene } from './step-scene.ts';

/** A seam narrower than this on the board could not be seen, nor told from a second one. */
const LEAST = 12;

/**
 * The quilt from above with its stitching round the edge, a line a round.
 */
export function drawBorder({
  columns,
  rows,
  cut,
  seam,
  unit,
  borderPasses,
}: StepScene): readonly Shape[] {
  const face = cut - 2 * seam;
  const [wide, high] = [columns * face + 2 * seam, rows * face + 2 * seam];
  const scale = Math.min(230 / wide, 168 / high);
  const quilt = {
    x: 134 - (wide * scale) / 2,
    y: 100 - (high * scale) / 2,
    width: wide * scale,
    height: high * scale,
  };
  const inside = Math.max(seam * scale, LEAST);
  const rounds = Array.from({ length: borderPasses }, (_, at) => {
    const inset = inside - at * 3;
    return traceBox({
      x: quilt.x + inset,
      y: quilt.y + inset,
      width: Math.max(1, quilt.width - 2 * inset),
      height: Math.max(1, quilt.height - 2 * inset),
    });
  });
  const right = quilt.x + quilt.width;
  const level = 100;
  return [
    { kind: 'path', part: 'piece', d: traceBox(quilt), fill: FLANNEL, stroke: INK, breadth: 1.6 },
    drawLine('quilting', rounds.slice(0, 3).join(''), { breadth: 1.8, dash: '7 3', stroke: INK }),
    drawLine('measure', `M${place(right - inside)} ${level - 5}v10m0 -5H${place(right)}m0 -5v10`, {
      breadth: 1.8,
      stroke: INK,
    }),
    drawLabel(Math.min(right + 36, 268), level, sayMeasure(seam, unit)),
  ];
}
