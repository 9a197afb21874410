import { drawBlocks } from '#core/drawing/draw-blocks.ts';
import type { Drawing } from '#core/drawing/shape.ts';
import type { Meeting } from '#core/layout/list-touching.ts';

/** Side of a block in the drawing. */
const FACE = 100;

/** One row of a grid of prints. */
export interface LaidRow {
  /** A letter a block. */
  readonly row: string;
  /** Its place from the top, 0 the first. */
  readonly down: number;
  readonly colorOf: (print: number) => string | undefined;
  /** Blocks large enough for fine figures. */
  readonly isFine: boolean;
}

/**
 * The cloth of one row. A grid is drawn row by row, so that a swap draws two rows anew and not all of them. Letters
 * stand in the table that lies over it.
 *
 * @example
 * drawRow({ row: 'AB', down: 3, colorOf: () => undefined, isFine: true }).box // => { x: 0, y: 0, width: 200, height: 100 }
 */
export function drawRow({ row, down, colorOf, isFine }: LaidRow): Drawing {
  const isOdd = down % 2 === 1;
  const shapes = drawBlocks({
    // An empty row before it: which blocks lie a quarter turn follows from the place in the whole grid.
    ...{ cells: isOdd ? ['', row] : [row], x: 0, y: isOdd ? -FACE : 0 },
    ...{ faceWidth: FACE, faceHeight: FACE, colorOf },
    repeats: isFine ? 3 : 1,
    hasLetters: false,
    alternating: true,
  });
  return { box: { x: 0, y: 0, width: row.length * FACE, height: FACE }, shapes };
}

/**
 * Where the blocks of one row meet their like beside and below them: a dashed line over a side, a diamond over a
 * corner, so that it is told by form and not by colour alone.
 *
 * @param meetings those whose first block lies in the row.
 * @param columns blocks in the row.
 */
export function drawMeetings(meetings: readonly Meeting[], columns: number): Drawing {
  const d = meetings.map((meeting) => traceMeeting(meeting, columns)).join('');
  const stroke = { kind: 'path', part: 'cut', d, round: true } as const;
  return {
    box: { x: 0, y: 0, width: columns * FACE, height: FACE },
    shapes: [
      { ...stroke, stroke: '#fffaf0', breadth: 17 },
      { ...stroke, stroke: '#a3302c', breadth: 9, dash: '14 12' },
    ],
  };
}

function traceMeeting({ kind, places: [one, other] }: Meeting, columns: number): string {
  const column = one % columns;
  if (kind === 'corner') {
    const x = (other - one > columns ? column + 1 : column) * FACE;
    return `M${x} ${FACE - 14}l14 14l-14 14l-14 -14z`;
  }
  const isBeside = other - one === 1 && other % columns !== 0;
  return isBeside
    ? `M${(column + 1) * FACE} 12v${FACE - 24}`
    : `M${column * FACE + 12} ${FACE}h${FACE - 24}`;
}
