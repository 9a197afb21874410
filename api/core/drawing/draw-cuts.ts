import { drawRoll, spanOf } from './draw-roll.ts';
import type { DrawnCuts } from './drawn-cuts.ts';
import { type CutWords, ENGLISH_CUTS, readCuts, type TitledRoll } from './read-cuts.ts';
import { type Drawing, place, type Shape } from './shape.ts';

/** Letters are this share of the whole width, so that they read on a phone and on paper. */
const LETTERS = 1 / 40;

/**
 * How cloth is cut, to scale in millimetres: each roll and each kind of flat piece strip by strip, its cuts numbered
 * in their order, each piece with its letter, what is left over hatched, and a key to the letters below.
 *
 * @param answer a yardage, or whatever tells of strips in the same way.
 */
export function drawCuts(answer: DrawnCuts, words: CutWords = ENGLISH_CUTS): Drawing {
  const rolls = answer.fabrics.flatMap((_, at) => readCuts(answer, at, words));
  const letters = findLetters(rolls);
  const width = Math.max(0, ...rolls.map(({ roll }) => spanOf(roll, letters)));
  const shapes: Shape[] = [];
  let y = 0;
  const write = (text: string, wished: number) => {
    const size = Math.min(wished, (width * 1.7) / Math.max(1, text.length));
    y += size;
    shapes.push({
      ...{ kind: 'text', part: 'measure-text', fill: 'currentColor', text, size: place(size) },
      ...{ x: place(width / 2), y: place(y) },
    });
    y += size;
  };
  for (const { title, keys, roll } of rolls) {
    write(title, letters * 1.2);
    const drawn = drawRoll(roll, { x: (width - spanOf(roll, letters)) / 2, y, letters });
    shapes.push(...drawn.shapes);
    y += drawn.height + letters * 0.6;
    for (const key of keys) write(key, letters * 0.9);
    y += letters;
  }
  return { box: { x: 0, y: 0, width: place(width), height: place(y) }, shapes };
}

/** The letters' height: the share of the width that they take up themselves is found by going round twice. */
function findLetters(rolls: readonly TitledRoll[]): number {
  const widest = (letters: number) =>
    Math.max(1, ...rolls.map(({ roll }) => spanOf(roll, letters)));
  return widest(widest(0) * LETTERS) * LETTERS;
}
