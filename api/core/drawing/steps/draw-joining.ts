import { place, type Shape } from '../shape.ts';
import { traceBox } from '../trace-box.ts';
import { traceHatch } from '../trace-hatch.ts';
import { drawLabel, drawLine } from './draw-line.ts';
import { sayMeasure } from './say-measure.ts';
import { FLANNEL, INK, type StepScene } from './step-scene.ts';

const LAYER = 16;
const APART = 6;

/**
 * Two blocks backing to backing, seen from the side: print outside, backing inside, and the seam through both
 * at the allowance from the raw edges. Prints are hatched, each the other way.
 */
export function drawJoining({ layers, seam, cut, unit }: StepScene): readonly Shape[] {
  const [left, width] = [30, 240];
  const right = left + width;
  const needle = right - Math.min(Math.max((width * seam) / cut, 34), 120);
  const height = 2 * layers * LAYER + APART;
  const top = 104 - height / 2;
  const bands = Array.from({ length: 2 * layers }, (_, at) => ({
    x: left,
    y: top + at * LAYER + (at >= layers ? APART : 0),
    width,
    height: LAYER,
  }));
  const prints = [bands[0], bands.at(-1)].flatMap((band) => band ?? []);
  const under = top + height + 16;
  return [
    {
      ...{ kind: 'path', part: 'piece', fill: FLANNEL, stroke: INK, breadth: 1.6 },
      d: bands.map(traceBox).join(''),
    },
    ...prints.map((band) => drawLine('motif', traceHatch(band, 7), { breadth: 1.2, stroke: INK })),
    drawLine('quilting', `M${place(needle)} ${place(top - 12)}V${place(top + height + 10)}`, {
      ...{ breadth: 3, dash: '8 4' },
    }),
    drawLine('measure', `M${place(needle)} ${place(under - 5)}v10m0 -5H${right}m0 -5v10`, {
      breadth: 1.4,
    }),
    drawLabel((needle + right) / 2, under + 18, sayMeasure(seam, unit)),
  ];
}
