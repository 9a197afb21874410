import { type Box, type PathShape, place } from './shape.ts';

/** Where fringe stands on a quilt; lengths in millimetres. */
export interface FringeFrame {
  readonly columns: number;
  readonly rows: number;
  /** Left and top of the quilt. */
  readonly x: number;
  readonly y: number;
  /** From stitching line to stitching line. */
  readonly faceWidth: number;
  readonly faceHeight: number;
  /** Breadth of the outer fringe: one seam allowance. */
  readonly seam: number;
  /** From snip to snip as drawn. */
  readonly pitch: number;
  /** Washed fringe stands open in tufts, sewn fringe in straight tags. */
  readonly bloomed: boolean;
}

/** Undyed flannel in the light and in the shade, the dark between two tags, and the shadow below. */
const LIGHT = '#f5eddc';
const SHADE = '#d8c9ad';
const GAP = '#94866c';
const INK = '#1b2233';

/**
 * The fringe on every seam and along the edge: one stroke each, cut by its own dashes at the snip pitch.
 * An inner seam carries two allowances that stand up together; the edge carries one, lying flat.
 *
 * @example
 * drawFringe({ columns: 2, rows: 1, x: 0, y: 0, faceWidth: 100, faceHeight: 100, seam: 20, pitch: 5, bloomed: false })[0].part // => 'shadow'
 */
export function drawFringe(frame: FringeFrame): readonly PathShape[] {
  const { columns, rows, x, y, seam, pitch, bloomed } = frame;
  const width = columns * frame.faceWidth + 2 * seam;
  const height = rows * frame.faceHeight + 2 * seam;
  const box = { x, y, width, height };
  const draw = bloomed ? drawTufts : drawTags;
  const down = listSeams(x + seam, frame.faceWidth, columns);
  const across = listSeams(y + seam, frame.faceHeight, rows);
  // The middle of the outer allowance, side by side so that snips stay square to each.
  const sides = [x + seam / 2, x + width - seam / 2];
  const ends = [y + seam / 2, y + height - seam / 2];
  return [
    ...draw((offset) => traceLines(box, [sides, ends], offset), seam, pitch),
    ...(columns * rows > 1
      ? draw(
          (offset) => traceLines(box, [down, across], offset),
          seam * (bloomed ? 1.05 : 0.75),
          pitch,
        )
      : []),
  ];
}

/** Path data along the fringe, `offset` to both sides of its middle; one line where that is 0. */
type Trace = (offset: number) => string;

function listSeams(start: number, face: number, count: number): readonly number[] {
  return Array.from({ length: count - 1 }, (_, index) => start + (index + 1) * face);
}

function traceLines(
  { x, y, width, height }: Box,
  [down, across]: readonly [down: readonly number[], across: readonly number[]],
  offset: number,
): string {
  return (offset === 0 ? [0] : [-offset, offset])
    .flatMap((side) => [
      ...down.map((left) => `M${place(left + side)} ${place(y)}v${place(height)}`),
      ...across.map((top) => `M${place(x)} ${place(top + side)}h${place(width)}`),
    ])
    .join('');
}

function drawTags(trace: Trace, breadth: number, pitch: number): readonly PathShape[] {
  const line = { kind: 'path', d: trace(0), breadth: place(breadth) } as const;
  const dash = `${place(pitch * 0.78)} ${place(pitch * 0.22)}`;
  return [
    { ...line, part: 'shadow', stroke: INK, breadth: place(breadth * 1.25), opacity: 0.22 },
    { ...line, part: 'fringe', stroke: GAP },
    { ...line, part: 'snip', stroke: LIGHT, dash },
    { ...line, part: 'fringe', stroke: SHADE, breadth: place(breadth * 0.14) },
  ];
}

/** Tufts along both sides of a worn-open middle: a dash of no length with round ends is a dot. */
function drawTufts(trace: Trace, breadth: number, pitch: number): readonly PathShape[] {
  const line = { kind: 'path', d: trace(0), breadth: place(breadth * 0.8) } as const;
  const tufts = { ...line, part: 'snip', d: trace(breadth * 0.27), round: true } as const;
  const spread = (steps: readonly number[]) =>
    steps.map((step) => `0 ${place(step * pitch)}`).join(' ');
  const size = place(Math.max(breadth * 0.46, pitch * 1.2));
  return [
    { ...line, part: 'shadow', stroke: INK, breadth: place(breadth * 1.25), opacity: 0.34 },
    { ...line, part: 'fringe', stroke: SHADE },
    { ...tufts, stroke: SHADE, breadth: size, dash: spread([1.5, 1.1, 1.9]) },
    { ...tufts, stroke: LIGHT, breadth: place(size * 0.82), dash: spread([1.7, 1.3, 1.5, 1.9]) },
    {
      ...line,
      part: 'snip',
      stroke: GAP,
      round: true,
      breadth: place(size * 0.16),
      dash: spread([1.3, 0.9]),
    },
  ];
}
