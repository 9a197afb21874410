import type { Box, Drawing } from '#core/drawing/shape.ts';

/**
 * Gives drawings frames of one size, each drawing in the middle of the foot of its own, so that they are shown at one
 * scale.
 *
 * @example
 * frameAlike([{ box: { x: 0, y: 0, width: 4, height: 2 }, shapes: [] }, { box: { x: 0, y: 0, width: 2, height: 4 }, shapes: [] }])[1].box // => { x: -1, y: 0, width: 4, height: 4 }
 */
export function frameAlike(drawings: readonly Drawing[]): readonly Drawing[] {
  const width = Math.max(...drawings.map(({ box }) => box.width));
  const height = Math.max(...drawings.map(({ box }) => box.height));
  return drawings.map(({ box, shapes }) => ({ box: widen(box, { width, height }), shapes }));
}

function widen(box: Box, { width, height }: Pick<Box, 'width' | 'height'>): Box {
  return {
    x: box.x - (width - box.width) / 2,
    y: box.y - (height - box.height),
    width,
    height,
  };
}
