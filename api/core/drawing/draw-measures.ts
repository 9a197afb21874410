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
  const [middle, centre] = [box.x + box.width / 2, box.y + box.height / 2];
  const tick = place(size * 0.3);
  const gap = (text: string) => text.length * size * 0.32;
  const [across, down] = [gap(texts.width), gap(texts.height)];
  const d =
    `M${place(box.x)} ${place(under - tick)}v${2 * tick}m0 ${-tick}H${place(middle - across)}` +
    `M${place(middle + across)} ${place(under)}H${place(box.x + box.width)}m0 ${-tick}v${2 * tick}` +
    `M${place(beside - tick)} ${place(box.y)}h${2 * tick}m${-tick} 0V${place(centre - down)}` +
    `M${place(beside)} ${place(centre + down)}V${place(box.y + box.height)}m${-tick} 0h${2 * tick}`;
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
