import type { Shape } from '../shape.ts';
import { place } from '../shape.ts';
import { traceBox } from '../trace-box.ts';
import { traceHatch } from '../trace-hatch.ts';
import { drawLabel, drawLine } from './draw-line.ts';
import { sayMeasure } from './say-measure.ts';
import { FLANNEL, INK, type StepScene } from './step-scene.ts';

/**
 * Strips across the roll and their squares, to scale: the rest of each strip is hatched.
 */
export function drawCutting({ usableWidth, perStrip, cut, unit }: StepScene): readonly Shape[] {
  if (perStrip === 0) return [];
  const room = 270;
  const side = Math.min((room * cut) / usableWidth, 120);
  const strips = Math.max(1, Math.min(3, Math.floor(150 / side)));
  const width = Math.min((usableWidth / cut) * side, room);
  const roll = { x: 15, y: 30, width, height: strips * side };
  const squares = perStrip * side;
  const across = Array.from(
    { length: strips + 1 },
    (_, at) => `M15 ${place(30 + at * side)}h${place(width)}`,
  );
  const down = Array.from(
    { length: perStrip },
    (_, at) => `M${place(15 + (at + 1) * side)} 30v${place(roll.height)}`,
  );
  const rest = { ...roll, x: 15 + squares, width: width - squares };
  return [
    { kind: 'path', part: 'piece', d: traceBox(roll), fill: FLANNEL, stroke: INK, breadth: 2 },
    ...(rest.width > 2 ? [drawLine('left', traceHatch(rest, 9), { breadth: 1, stroke: INK })] : []),
    drawLine('cut', across.join(''), { breadth: 2.4, stroke: INK }),
    drawLine('cut', down.join(''), { breadth: 1.6, dash: '7 4', stroke: INK }),
    drawLabel(15 + side / 2 + 20, 16, sayMeasure(cut, unit)),
  ];
}
