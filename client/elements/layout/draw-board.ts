import { drawBlocks } from '#core/drawing/draw-blocks.ts';
import type { Drawing, PathShape } from '#core/drawing/shape.ts';
import type { Meeting } from '#core/layout/list-touching.ts';

/** Side of a block in the drawing. */
const FACE = 100;
/** More blocks than this are too small for fine figures. */
const FEW = 150;

/** A grid of prints. */
export interface LaidBoard {
  readonly cells: readonly string[];
  readonly colorOf: (print: number) => string | undefined;
  readonly meetings: readonly Meeting[];
}

/**
 * The blocks of a grid and where prints meet themselves: a dashed line over a side, a diamond over a corner, so that
 * it is told by form and not by colour alone. Letters stand in the table that lies over it.
 *
 * @example
 * drawBoard({ cells: ['AB'], colorOf: () => undefined, meetings: [] }).box // => { x: 0, y: 0, width: 200, height: 100 }
 */
export function drawBoard({ cells, colorOf, meetings }: LaidBoard): Drawing {
  const columns = cells[0]?.length ?? 0;
  const isFine = columns * cells.length > FEW;
  const frame = { x: 0, y: 0, faceWidth: FACE, faceHeight: FACE };
  const blocks = drawBlocks({
    ...frame,
    cells,
    colorOf,
    repeats: isFine ? 1 : 3,
    hasLetters: false,
    alternating: true,
  });
  const d = meetings.map((meeting) => traceMeeting(meeting, columns)).join('');
  const stroke = { kind: 'path', part: 'cut', d, round: true } as const;
  const marks: readonly PathShape[] = [
    { ...stroke, stroke: '#fffaf0', breadth: 17 },
    { ...stroke, stroke: '#a3302c', breadth: 9, dash: '14 12' },
  ];
  return {
    box: { x: 0, y: 0, width: columns * FACE, height: cells.length * FACE },
    shapes: d === '' ? blocks : [...blocks, ...marks],
  };
}

function traceMeeting({ kind, places: [one, other] }: Meeting, columns: number): string {
  const row = Math.floor(one / columns);
  const column = one % columns;
  if (kind === 'corner') {
    const isRight = other - one > columns;
    const x = (isRight ? column + 1 : column) * FACE;
    return `M${x} ${(row + 1) * FACE - 14}l14 14l-14 14l-14 -14z`;
  }
  const isBeside = other - one === 1 && other % columns !== 0;
  return isBeside
    ? `M${(column + 1) * FACE} ${row * FACE + 12}v${FACE - 24}`
    : `M${column * FACE + 12} ${(row + 1) * FACE}h${FACE - 24}`;
}
