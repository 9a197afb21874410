import { drawBlocks } from '#core/drawing/draw-blocks.ts';
import type { Drawing } from '#core/drawing/shape.ts';
import { letterOf } from '#core/layout/letter-of.ts';
import type { ShownKits } from '../../data/kits-answer-schema.ts';

const FACE = 100;
/** Of more squares than this the figures would run together. */
const FEW = 60;
/** As many prints as there are letters. */
const LETTERS = 26;

/** The prints on bolts in the order in which they first come; each has its letter and its look everywhere. */
export function listPrints({ input }: ShownKits): readonly string[] {
  const top = input.bolts.filter(({ role }) => role === 'top');
  return [...new Set(top.map(({ print }) => print))];
}

/**
 * The top squares of one kit laid side by side, print by print, in about as many rows as columns.
 *
 * @param prints what is in it, in squares.
 * @param order all prints, for their looks.
 */
export function drawKit(
  prints: readonly { readonly id: string; readonly blocks: number }[],
  order: readonly string[],
): Drawing {
  const placed = prints.toSorted((one, other) => order.indexOf(one.id) - order.indexOf(other.id));
  const letters = placed
    .map(({ id, blocks }) => letterOf(Math.max(0, order.indexOf(id)) % LETTERS).repeat(blocks))
    .join('');
  const across = Math.max(1, Math.ceil(Math.sqrt(letters.length)));
  const rows = Math.ceil(letters.length / across);
  const cells = Array.from({ length: rows }, (_, row) =>
    letters.slice(row * across, (row + 1) * across),
  );
  const shapes = drawBlocks({
    ...{ cells, x: 0, y: 0, faceWidth: FACE, faceHeight: FACE },
    colorOf: () => undefined,
    repeats: letters.length > FEW ? 1 : 2,
    hasLetters: letters.length <= FEW,
    alternating: false,
  });
  return {
    box: { x: 0, y: 0, width: across * FACE, height: rows * FACE },
    shapes: shapes.filter(({ part }) => part !== 'quilting'),
  };
}
