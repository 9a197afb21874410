import { drawRoll, spanOf } from '#core/drawing/draw-roll.ts';
import type { DrawnRoll } from '#core/drawing/lay-bands.ts';
import type { Drawing } from '#core/drawing/shape.ts';

/** Letters are this share of the widest cloth: they read where several drawings stand beside one another. */
const LETTERS = 1 / 15;

/** Rolls or pieces of cloth cut into strips, each a drawing of its own and all of them in one scale. */
export function rollDrawings(rolls: readonly DrawnRoll[]): readonly Drawing[] {
  const letters = Math.max(1, ...rolls.map((roll) => spanOf(roll, 0))) * LETTERS;
  const width = Math.max(1, ...rolls.map((roll) => spanOf(roll, letters)));
  return rolls.map((roll) => {
    const { shapes, height } = drawRoll(roll, { x: 0, y: 0, letters });
    return { box: { x: 0, y: -1, width, height: height + 2 }, shapes };
  });
}
