import { type Box, place, type Shape } from './shape.ts';

/**
 * Two dimension lines, one under and one to the left of a box, each with its measure.
 *
 * @param box what is measured, in millimetres.
 * @param texts the measures as they are to be read.
 * @param lines `size` of the letters and how far down and left the lines stand, in millimetres.
 *
 * @example
 * drawMeasures({ x: 0, y: 0, width: 900, height: 1200 }, { width: '36 in', height: '48 in' }, { size: 40, under: 1240, beside: -40 }).length // => 3
 */
export function drawMeasures(
  box: Box,
  texts: { readonly width: string; readonly height: string },
  lines: { readonly size: number; readonly under: number; readonly beside: number },
): readonly Shape[] {
  const { size, under, beside } = lines;
  const [right, foot] = [box.x + box.width, box.y + box.height];
  const [middle, centre] = [box.x + box.width / 2, box.y + box.height / 2];
  const gap = { across: texts.width.length * size * 0.32, down: texts.height.length * size * 0.32 };
  const tick = size * 0.3;
  const strokes = [
    [box.x, under - tick, box.x, under + tick],
    [box.x, under, middle - gap.across, under],
    [middle + gap.across, under, right, under],
    [right, under - tick, right, under + tick],
    [beside - tick, box.y, beside + tick, box.y],
    [beside, box.y, beside, centre - gap.down],
    [beside, centre + gap.down, beside, foot],
    [beside - tick, foot, beside + tick, foot],
  ] as const;
  const d = strokes
    .map(([x1, y1, x2, y2]) => `M${place(x1)} ${place(y1)}L${place(x2)} ${place(y2)}`)
    .join('');
  const text = {
    kind: 'text',
    part: 'measure-text',
    size: place(size),
    fill: 'currentColor',
  } as const;
  return [
    { kind: 'path', part: 'measure', d, stroke: 'currentColor', breadth: place(size / 24) },
    { ...text, x: place(middle), y: place(under), text: texts.width },
    { ...text, x: place(beside), y: place(centre), text: texts.height, turn: -90 },
  ];
}
