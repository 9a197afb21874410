import { findPrintLook } from './find-print-look.ts';
import { type Box, type PathShape, place, type Shape } from './shape.ts';
import { traceBox } from './trace-box.ts';
import { traceMotif } from './trace-motif.ts';

/** The blocks of a quilt as they lie; lengths in millimetres. */
export interface BlockFrame {
  /** A string a row from the top, a letter a block, A the first print. */
  readonly cells: readonly string[];
  /** Top left corner of the first face. */
  readonly x: number;
  readonly y: number;
  readonly faceWidth: number;
  readonly faceHeight: number;
  /** A print's own colour, where it has one. */
  readonly colorOf: (print: number) => string | undefined;
  /** How often each figure stands along a side of a block. */
  readonly repeats: number;
  readonly hasLetters: boolean;
  /** Every other block a quarter turn. */
  readonly alternating: boolean;
}

interface Face extends Box {
  readonly print: number;
  readonly turned: boolean;
}

/**
 * The faces of the blocks: each print's ground and figure, the X of quilting, and a letter where wanted.
 *
 * @example
 * drawBlocks({ cells: ['A'], x: 0, y: 0, faceWidth: 90, faceHeight: 90, colorOf: () => undefined, repeats: 3, hasLetters: true, alternating: true }).length // => 4
 */
export function drawBlocks(frame: BlockFrame): readonly Shape[] {
  const faces = listFaces(frame);
  const prints = [...new Set(faces.map(({ print }) => print))].sort((a, b) => a - b);
  const cloth = prints.flatMap((print) =>
    drawPrint(
      faces.filter((face) => face.print === print),
      print,
      { color: frame.colorOf(print), repeats: frame.repeats },
    ),
  );
  return [...cloth, drawQuilting(faces), ...(frame.hasLetters ? faces.map(drawLetter) : [])];
}

function listFaces({
  cells,
  x,
  y,
  faceWidth,
  faceHeight,
  alternating,
}: BlockFrame): readonly Face[] {
  return cells.flatMap((row, down) =>
    [...row].map((letter, across) => ({
      x: x + across * faceWidth,
      y: y + down * faceHeight,
      width: faceWidth,
      height: faceHeight,
      print: letter.charCodeAt(0) - 65,
      turned: alternating && (across + down) % 2 === 1,
    })),
  );
}

function drawPrint(
  faces: readonly Face[],
  print: number,
  { color, repeats }: { readonly color: string | undefined; readonly repeats: number },
): readonly PathShape[] {
  const look = findPrintLook(print, color);
  const size = Math.min(faces[0]?.width ?? 0, faces[0]?.height ?? 0);
  const breadth = look.motif === 'dots' ? 0.36 : look.motif === 'checks' ? 0.2 : 0.1;
  return [
    { kind: 'path', part: 'face', print, d: faces.map(traceBox).join(''), fill: look.ground },
    {
      kind: 'path',
      part: 'motif',
      print,
      d: faces
        .map((face) => traceMotif(look.motif, face, { repeats, turned: face.turned }))
        .join(''),
      stroke: look.figure,
      breadth: place((size / repeats) * breadth),
      round: true,
      opacity: 0.6,
    },
  ];
}

function drawQuilting(faces: readonly Face[]): PathShape {
  const size = faces[0]?.width ?? 0;
  const d = faces
    .map(({ x, y, width, height }) => {
      const [across, down] = [place(width), place(height)];
      return `M${place(x)} ${place(y)}l${across} ${down}m0 ${-down}l${-across} ${down}`;
    })
    .join('');
  return {
    kind: 'path',
    part: 'quilting',
    d,
    stroke: '#1b2233',
    breadth: place(size / 55),
    dash: `${place(size / 18)} ${place(size / 36)}`,
    opacity: 0.6,
  };
}

function drawLetter({ x, y, width, height, print }: Face): Shape {
  const size = Math.min(width, height) * 0.26;
  return {
    kind: 'text',
    part: 'letter',
    print,
    x: place(x + width / 2),
    y: place(y + height / 2),
    size: place(size),
    text: String.fromCharCode(65 + print),
    fill: '#1b2233',
    rim: '#fffaf0',
  };
}
