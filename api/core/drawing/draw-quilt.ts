import type { Pair, Role, Unit } from '../contract.ts';
import { toMillimetres } from '../length.ts';
import { writeLength } from '../write-length.ts';
import { drawBlocks } from './draw-blocks.ts';
import { drawFringe } from './draw-fringe.ts';
import { drawMeasures } from './draw-measures.ts';
import { type Box, type Drawing, type PathShape, place } from './shape.ts';
import { traceBox } from './trace-box.ts';
import { typesetFractions } from './typeset-fractions.ts';

/** As much of a plan as its drawing needs: any plan answer will do. */
export interface DrawnPlan {
  readonly input: {
    readonly unit: Unit;
    readonly grain: string;
    readonly target: object & {
      readonly bed?: { readonly width: number; readonly length: number };
      readonly size?: string;
    };
    readonly layers: readonly {
      readonly role: Role;
      readonly prints: readonly { readonly color?: string }[];
    }[];
  };
  readonly assumptions: readonly {
    readonly path: string;
    readonly value: unknown;
  }[];
  readonly grid: { readonly columns: number; readonly rows: number };
  readonly block: { readonly seam: number; readonly snipPitch: number };
  readonly size: { readonly sewn: Pair; readonly washed: Pair };
  readonly wish: Pair;
  readonly layout: { readonly cells: readonly string[] };
}

/** Snips drawn along the longer side at most; finer ones would run together on a screen. */
const MOST_SNIPS = 180;
const INK = '#1b2233';
/** More blocks than this are too small on any screen for letters and fine figures. */
const FEW = 150;

/**
 * The quilt to scale in millimetres, as sewn or as it comes out of the wash: blocks in their prints, quilting,
 * fringe cut at the snip pitch (at a whole multiple of it where that is too fine to see), the mattress
 * where the wish was a bed, and its measures. Both states fill the same box, so that the shrink shows.
 *
 * @param answer a plan.
 * @param state `sewn`, or `washed` with the size it had before as a dashed outline.
 * @param shown what its measures are told in; else the unit of the plan.
 */
export function drawQuilt(
  answer: DrawnPlan,
  state: 'sewn' | 'washed',
  shown: Unit = answer.input.unit,
): Drawing {
  const { unit } = answer.input;
  const sewn = convertPair(answer.size.sewn, unit);
  const now = convertPair(answer.size[state], unit);
  const scale = { width: now.width / sewn.width, height: now.height / sewn.height };
  const x = (sewn.width - now.width) / 2;
  const y = (sewn.height - now.height) / 2;
  const seam = toMillimetres(answer.block.seam, unit) * Math.min(scale.width, scale.height);
  const faceWidth = (now.width - 2 * seam) / answer.grid.columns;
  const faceHeight = (now.height - 2 * seam) / answer.grid.rows;
  const longest = Math.max(sewn.width, sewn.height);
  const finest = toMillimetres(answer.block.snipPitch, unit);
  const pitch = finest * Math.ceil(longest / MOST_SNIPS / finest);
  const quilt = { x, y, ...now };
  const prints = answer.input.layers.find(({ role }) => role === 'top')?.prints ?? [];
  const isFine = answer.grid.columns * answer.grid.rows > FEW;
  const letters = longest / 26;
  return {
    box: frameAll(sewn, letters),
    shapes: [
      ...(state === 'washed' ? [drawOutline({ x: 0, y: 0, ...sewn }, longest)] : []),
      ...drawBlocks({
        cells: answer.layout.cells,
        x: x + seam,
        y: y + seam,
        faceWidth,
        faceHeight,
        colorOf: (print) => prints[print]?.color,
        repeats: isFine ? 1 : 3,
        hasLetters: prints.length > 1 && !isFine,
        alternating: answer.input.grain === 'alternating',
      }),
      ...drawFringe({
        ...answer.grid,
        ...{ x, y, faceWidth, faceHeight, seam, pitch },
        bloomed: state === 'washed',
      }),
      ...drawMattress(answer, quilt),
      ...drawMeasures(
        quilt,
        {
          width: typesetFractions(writeLength(now.width, shown)),
          height: typesetFractions(writeLength(now.height, shown)),
        },
        { size: letters, under: sewn.height + letters, beside: -letters },
      ),
    ],
  };
}

function convertPair({ width, height }: Pair, unit: Unit): Pair {
  return { width: toMillimetres(width, unit), height: toMillimetres(height, unit) };
}

/** Room at the left and below for the measures, a little elsewhere for the outline. */
function frameAll({ width, height }: Pair, letters: number): Box {
  const [wide, narrow] = [letters * 1.8, letters * 0.4];
  return {
    x: place(-wide),
    y: place(-narrow),
    width: place(width + wide + narrow),
    height: place(height + wide + narrow),
  };
}

function drawOutline(box: Box, longest: number): PathShape {
  return {
    kind: 'path',
    part: 'outline',
    d: traceBox(box),
    stroke: 'currentColor',
    breadth: place(longest / 500),
    dash: `${place(longest / 80)} ${place(longest / 120)}`,
    opacity: 0.6,
  };
}

/** The mattress lies under the quilt: its head end at the top, the drop equal at both sides. */
function drawMattress(answer: DrawnPlan, quilt: Box): readonly PathShape[] {
  const top = findMattress(answer);
  if (top === undefined) return [];
  const d = traceBox({ x: quilt.x + (quilt.width - top.width) / 2, y: quilt.y, ...top });
  const breadth = place(quilt.height / 160);
  const dash = `${breadth * 5} ${breadth * 2}`;
  return [
    { kind: 'path', part: 'mattress', d, stroke: '#fffaf0', breadth: breadth * 2 },
    { kind: 'path', part: 'mattress', d, stroke: INK, breadth, dash },
  ];
}

/** As given, or what a named size leaves when the drop that was assumed for it is taken off. */
function findMattress({ input, assumptions, wish }: DrawnPlan): Pair | undefined {
  const { target, unit } = input;
  const { bed } = target;
  if (bed !== undefined) return convertPair({ width: bed.width, height: bed.length }, unit);
  const drop = assumptions.find(({ path }) => path === 'target.drop')?.value;
  if (target.size === undefined || typeof drop !== 'number') return undefined;
  return convertPair({ width: wish.width - 2 * drop, height: wish.height - drop }, unit);
}
