import { drawLeft } from '#core/drawing/draw-left.ts';
import { findPrintLook } from '#core/drawing/find-print-look.ts';
import { type Box, type Drawing, place, type Shape } from '#core/drawing/shape.ts';
import { traceBox } from '#core/drawing/trace-box.ts';

/** A bolt unrolled from left to right; lengths in millimetres. */
export interface UnrolledBolt {
  readonly width: number;
  readonly length: number;
  /** Cut away first. */
  readonly squaring: number;
  readonly cut: number;
  readonly strips: number;
  readonly perStrip: number;
  /** Squares that go into kits. */
  readonly used: number;
  /** Place of its print among the prints; absent for cloth that is not of the top. */
  readonly print?: number | undefined;
}

/** A row of the drawing is as long as the longest bolt, and no longer than this. */
const LONGEST_ROW = 7000;
const INK = '#1b2233';
const PAPER = '#fffaf0';
/** Cloth that is of no print. */
const PLAIN = '#d9d2c2';
/** Every so manieth strip is numbered. */
const STEP = 5;

/**
 * Bolts unrolled from left to right and all in one scale, a long one in several rows: the strips with their squares,
 * every fifth numbered, and what is left hatched.
 */
export function drawBolts(bolts: readonly UnrolledBolt[]): readonly Drawing[] {
  const row = Math.min(LONGEST_ROW, Math.max(1, ...bolts.map(({ length }) => length)));
  return bolts.map((bolt) => drawBolt(bolt, row));
}

function drawBolt(bolt: UnrolledBolt, row: number): Drawing {
  const letters = row / 38;
  const inRow = Math.max(1, Math.floor((row - bolt.squaring) / bolt.cut + 1e-9));
  const rows = Math.max(1, Math.ceil(bolt.strips / inRow));
  const pitch = bolt.width + letters * 1.4;
  const start = (strip: number) => (strip < inRow ? bolt.squaring : 0) + (strip % inRow) * bolt.cut;
  const top = (strip: number) => letters * 1.3 + Math.floor(strip / inRow) * pitch;
  const taken = bolt.squaring + bolt.strips * bolt.cut;
  const last = rows - 1;
  const end = bolt.strips === 0 ? 0 : start(bolt.strips - 1) + bolt.cut;
  const rest = Math.min(row - end, Math.max(0, bolt.length - (bolt.strips === 0 ? 0 : taken)));
  const left: Box = { x: end, y: letters * 1.3 + last * pitch, width: rest, height: bolt.width };
  const edge = { kind: 'path', part: 'outline', stroke: 'currentColor' } as const;
  return {
    box: { x: -2, y: 0, width: place(row + 4), height: place(letters * 1.3 + rows * pitch) },
    shapes: [
      ...drawLeft([left, ...listTrims(bolt, { start, top })], letters),
      { ...edge, d: traceBox(left), breadth: place(letters / 16) },
      ...drawSquares(bolt, { start, top, letters }),
      ...numberStrips(bolt, { start, top, letters }),
    ],
  };
}

interface Places {
  readonly start: (strip: number) => number;
  readonly top: (strip: number) => number;
}

/** The straight edge, and the edge beside the squares of each strip. */
function listTrims(bolt: UnrolledBolt, { start, top }: Places): readonly Box[] {
  const below = bolt.width - bolt.perStrip * bolt.cut;
  const strips = Array.from({ length: bolt.strips }, (_, strip) => ({
    x: start(strip),
    y: top(strip) + bolt.width - below,
    width: bolt.cut,
    height: below,
  }));
  const first = { x: 0, y: top(0), width: bolt.squaring, height: bolt.width };
  return bolt.strips === 0 ? [] : [first, ...strips];
}

function drawSquares(
  bolt: UnrolledBolt,
  { start, top, letters }: Places & { readonly letters: number },
): readonly Shape[] {
  const squares = Array.from({ length: bolt.strips * bolt.perStrip }, (_, square) => {
    const strip = Math.floor(square / bolt.perStrip);
    const y = top(strip) + (square % bolt.perStrip) * bolt.cut;
    return traceBox({ x: start(strip), y, width: bolt.cut, height: bolt.cut });
  });
  const path = { kind: 'path', part: 'piece', stroke: INK, breadth: place(letters / 20) } as const;
  const fill = bolt.print === undefined ? PLAIN : findPrintLook(bolt.print).ground;
  const [used, over] = [squares.slice(0, bolt.used), squares.slice(bolt.used)];
  return [
    ...(used.length > 0 ? [{ ...path, d: used.join(''), fill }] : []),
    ...(over.length > 0
      ? [{ ...path, d: over.join(''), fill: PAPER, dash: `${letters / 6}` }]
      : []),
  ];
}

function numberStrips(
  bolt: UnrolledBolt,
  { start, top, letters }: Places & { readonly letters: number },
): readonly Shape[] {
  const numbers = Array.from({ length: bolt.strips }, (_, strip) => strip).filter(
    (strip) => strip === 0 || (strip + 1) % STEP === 0,
  );
  return numbers.map((strip) => ({
    ...{ kind: 'text', part: 'measure-text', fill: 'currentColor', size: place(letters) },
    x: place(start(strip) + bolt.cut / 2),
    y: place(top(strip) - letters * 0.65),
    text: `${strip + 1}`,
  }));
}
