import { drawLeft } from './draw-left.ts';
import { type Box, type PathShape, place, type Shape } from './shape.ts';
import { traceBox } from './trace-box.ts';

/** A size of piece, in millimetres. */
export interface CutKind {
  /** Stands in each piece of the drawing; empty for pieces that need none. */
  readonly letter: string;
  /** Its sides as they are read, such as `8½ × 8½`. */
  readonly sides: string;
  /** Across the roll. */
  readonly width: number;
  /** Along the roll. */
  readonly length: number;
}

/** How letters are set in a strip. */
export interface Lettering {
  /** Height of small letters, in millimetres. */
  readonly letters: number;
  /** Letters in the pieces, and their sides too. */
  readonly isNamed: boolean;
  readonly isSized: boolean;
}

/** One strip to draw, in millimetres. */
export interface DrawnStrip {
  readonly length: number;
  readonly pieces: readonly {
    readonly kind: CutKind;
    readonly count: number;
    readonly turned: boolean;
  }[];
}

interface Laid extends Box {
  readonly kind: CutKind;
  readonly turned: boolean;
}

const INK = '#1b2233';
const PAPER = '#fffaf0';

/**
 * One strip across the roll: its pieces side by side from the left, each with its letter, one that is turned a
 * quarter dashed and with its letter on its side; what is trimmed off and left over hatched.
 *
 * @param strip what is cut from it.
 * @param box where it lies; as wide as the roll is used.
 */
export function drawStrip(strip: DrawnStrip, box: Box, lettering: Lettering): readonly Shape[] {
  const { letters } = lettering;
  const laid = layPieces(strip, box);
  const breadth = place(letters / 14);
  const turned = laid.filter((piece) => piece.turned);
  const inner = (piece: Laid): Box => {
    const edge = letters / 4;
    const [width, height] = [piece.width - 2 * edge, piece.height - 2 * edge];
    return { x: piece.x + edge, y: piece.y + edge, width, height };
  };
  const outline: PathShape = {
    kind: 'path',
    part: 'piece',
    d: laid.map(traceBox).join(''),
    fill: PAPER,
    stroke: INK,
    breadth,
  };
  const dashes: PathShape = {
    ...{ kind: 'path', part: 'outline', d: turned.map((piece) => traceBox(inner(piece))).join('') },
    ...{ stroke: INK, breadth, dash: `${place(letters / 3)} ${place(letters / 4)}` },
  };
  const edge: PathShape = {
    ...{ kind: 'path', part: 'outline', d: traceBox(box) },
    ...{ stroke: 'currentColor', breadth: place(letters / 18) },
  };
  return [
    edge,
    ...drawLeft(listLeft(laid, box), letters),
    outline,
    ...(turned.length > 0 ? [dashes] : []),
    ...laid.flatMap((piece) => writePiece(piece, lettering)),
  ];
}

function layPieces({ pieces }: DrawnStrip, box: Box): readonly Laid[] {
  const laid: Laid[] = [];
  let { x } = box;
  for (const { kind, count, turned } of pieces) {
    const [width, height] = turned ? [kind.length, kind.width] : [kind.width, kind.length];
    for (let piece = 0; piece < count; piece += 1) {
      laid.push({ x, y: box.y, width, height, kind, turned });
      x += width;
    }
  }
  return laid;
}

/** Below pieces that are not as tall as the strip, and beside the last. */
function listLeft(laid: readonly Laid[], box: Box): readonly Box[] {
  const end = laid.reduce((far, { x, width }) => Math.max(far, x + width), box.x);
  const below = laid.map(({ x, y, width, height }) => {
    return { x, y: y + height, width, height: box.height - height };
  });
  const beside = { x: end, y: box.y, width: box.x + box.width - end, height: box.height };
  return [...below, beside].filter(({ width, height }) => width > 0.05 && height > 0.05);
}

function writePiece(
  { x, y, width, height, kind, turned }: Laid,
  lettering: Lettering,
): readonly Shape[] {
  const { letters, isNamed, isSized } = lettering;
  if (!isNamed || kind.letter === '') return [];
  const size = place(Math.min(letters * 1.5, width * 0.6, height * 0.6));
  const middle = { x: place(x + width / 2), y: place(y + height / 2) };
  const text = { kind: 'text', part: 'letter', fill: INK } as const;
  const letter = { ...text, ...middle, size, text: kind.letter, ...(turned && { turn: 90 }) };
  const small = place(letters * 0.8);
  const hasRoom = kind.sides.length * small * 0.62 < width && height > letters * 3.6;
  if (!isSized || !hasRoom) return [letter];
  const below = { ...middle, y: place(y + height / 2 + letters * 1.3) };
  return [letter, { ...text, ...below, size: small, text: kind.sides }];
}
