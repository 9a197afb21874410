import { drawLeft } from './draw-left.ts';
import { drawStrip } from './draw-strip.ts';
import { type Band, countColumns, type DrawnRoll, layBands } from './lay-bands.ts';
import { type Box, place, type Shape } from './shape.ts';
import { traceBox } from './trace-box.ts';

/** Of more strips than this only the first of those alike have letters. */
const FEW = 60;

/** The width that a roll takes up in a drawing, its numbers and measures included. */
export function spanOf(roll: DrawnRoll, letters: number): number {
  return countColumns(roll) * (roll.width + letters * 3.6);
}

/**
 * A roll strip by strip from its end, folded into columns that are read from the left: each strip numbered in the
 * order of the cuts at the line of its cut, the first of strips alike with its length.
 *
 * @param roll what is cut.
 * @param at its top left corner, and the height of small letters.
 * @returns its shapes, and how tall the tallest column is.
 */
export function drawRoll(
  roll: DrawnRoll,
  { x, y, letters }: { readonly x: number; readonly y: number; readonly letters: number },
): { readonly shapes: readonly Shape[]; readonly height: number } {
  const bands = layBands(roll);
  const lay = ({ column, y: down, height }: Band): Box => ({
    x: x + letters * 2.2 + column * (roll.width + letters * 3.6),
    ...{ y: y + down, width: roll.width, height },
  });
  const shapes = bands.flatMap((band) => {
    const box = lay(band);
    if (band.group === undefined) return drawBand(box, letters);
    const isNamed = band.isFirst || bands.length <= FEW;
    const lettering = { letters, isNamed, isSized: band.isFirst };
    return [...drawStrip(band.group, box, lettering), ...drawCut(band, box, letters)];
  });
  return { shapes, height: Math.max(0, ...bands.map(({ y: down, height }) => down + height)) };
}

function drawBand(box: Box, letters: number): readonly Shape[] {
  const stroke = 'currentColor';
  const breadth = place(letters / 18);
  const edge = { kind: 'path', part: 'left', d: traceBox(box), stroke, breadth } as const;
  return [...drawLeft([box], letters), edge];
}

/** The cut below a strip, its number, and how tall the strip is. */
function drawCut(
  { number, group, isFirst }: Band,
  { x, y, width, height }: Box,
  letters: number,
): readonly Shape[] {
  const line = `M${place(x - letters * 1.9)} ${place(y + height)}H${place(x + width)}`;
  const stroke = 'currentColor';
  const text = { kind: 'text', part: 'measure-text', fill: 'currentColor' } as const;
  const middle = place(y + height / 2);
  const tight = Math.min(letters, height * 0.9);
  const reads = group?.reads ?? '';
  const hasRoom = isFirst && reads.length * letters * 0.5 < height;
  const beside = { x: place(x + width + letters * 0.7), y: middle, turn: -90 };
  return [
    { kind: 'path', part: 'cut', d: line, stroke, breadth: place(letters / 9) },
    { ...text, x: place(x - letters * 1.1), y: middle, size: place(tight), text: `${number}` },
    ...(hasRoom ? [{ ...text, ...beside, size: place(letters * 0.8), text: reads }] : []),
  ];
}
