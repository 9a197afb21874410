import type { Pair, Unit } from '#core/contract.ts';
import { drawQuilt } from '#core/drawing/draw-quilt.ts';
import type { Drawing, PathShape } from '#core/drawing/shape.ts';
import { traceBox } from '#core/drawing/trace-box.ts';
import { toMillimetres } from '#core/length.ts';

/** A quilt before and after the wash, sides in `unit`. */
export interface BeforeAfter {
  readonly unit: Unit;
  readonly grain: string;
  readonly grid: { readonly columns: number; readonly rows: number };
  readonly seam: number;
  readonly sewn: Pair;
  readonly washed: Pair;
  /** Smallest and largest that it may come out. */
  readonly low: Pair;
  readonly high: Pair;
}

/** A madder that stands out from the ground in the light and in the dark, and from the fringe. */
const LIMIT = '#c2453d';
const PRINTS = 4;

/** Ours to draw with where nobody said what the block is: half a snip depth of an inch, or 6 mm. */
const SNIP_PITCH = { in: 0.25, cm: 0.6 } as const;

/**
 * The quilt to scale as it comes out of the wash, in the outline that it had as sewn, with the smallest and the
 * largest that it may come out.
 */
export function drawBeforeAfter(quilt: BeforeAfter): Drawing {
  const { unit, grain, grid, seam, sewn, washed } = quilt;
  const prints = Array.from({ length: PRINTS }, () => ({}));
  const drawn = drawQuilt(
    {
      input: { unit, grain, target: {}, layers: [{ role: 'top', prints }] },
      assumptions: [],
      grid,
      block: { seam, snipPitch: SNIP_PITCH[unit] },
      size: { sewn, washed },
      wish: washed,
      layout: { cells: listCells(grid) },
    },
    'washed',
  );
  const limits = [drawLimit(quilt, quilt.low), drawLimit(quilt, quilt.high)];
  return { ...drawn, shapes: [...drawn.shapes, ...limits] };
}

/** Prints in slanting rows, each a letter. */
function listCells({ columns, rows }: BeforeAfter['grid']): readonly string[] {
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) =>
      String.fromCharCode(65 + ((column + 2 * row) % PRINTS)),
    ).join(''),
  );
}

function drawLimit({ unit, sewn }: BeforeAfter, size: Pair): PathShape {
  const mm = (value: number) => toMillimetres(value, unit);
  const box = {
    x: mm(sewn.width - size.width) / 2,
    y: mm(sewn.height - size.height) / 2,
    width: mm(size.width),
    height: mm(size.height),
  };
  const breadth = mm(Math.max(sewn.width, sewn.height)) / 260;
  return { kind: 'path', part: 'outline', d: traceBox(box), stroke: LIMIT, breadth };
}

/**
 * The blocks to draw where nobody said how many there are: about as large as the trade cuts them.
 *
 * @param face side that shows, in the unit of the size.
 *
 * @example
 * guessGrid({ width: 42, height: 52 }, 7) // => { columns: 6, rows: 7 }
 */
export function guessGrid(size: Pair, face: number): BeforeAfter['grid'] {
  const count = (side: number) => Math.min(100, Math.max(1, Math.round(side / face)));
  return { columns: count(size.width), rows: count(size.height) };
}
