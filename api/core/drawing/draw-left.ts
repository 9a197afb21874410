import { type Box, type PathShape, place } from './shape.ts';
import { traceHatch } from './trace-hatch.ts';

/**
 * What is left over of cloth, hatched in the ink of the page so that it shows by night too.
 *
 * @param boxes where it lies, in millimetres.
 * @param letters height of small letters, which the pitch of the lines follows.
 *
 * @example
 * drawLeft([{ x: 0, y: 0, width: 9, height: 9 }], 10)[0]?.d // => 'M0 7L7 0M5 9L9 5'
 */
export function drawLeft(boxes: readonly Box[], letters: number): readonly PathShape[] {
  const d = boxes.map((box) => traceHatch(box, letters * 0.7)).join('');
  const breadth = place(letters / 18);
  if (d === '') return [];
  return [{ kind: 'path', part: 'left', d, stroke: 'currentColor', breadth, opacity: 0.7 }];
}
