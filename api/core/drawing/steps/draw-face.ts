import { drawBlocks } from '../draw-blocks.ts';
import { type PathShape, place, type Shape, type TextShape } from '../shape.ts';
import type { StepScene } from './step-scene.ts';

/** Blocks on the board: which, where their top left corner is, and how large one is. */
export interface FacePlace {
  readonly cells: readonly string[];
  readonly x: number;
  readonly y: number;
  readonly side: number;
}

/** Letters on faces below this size cannot be read. */
const READABLE = 18;

/**
 * Blocks of print on the board, without their quilting; letters where they can be read, larger on small
 * faces, since in grey they tell the prints apart.
 */
export function drawFace(
  { colorOf }: Pick<StepScene, 'colorOf'>,
  { cells, x, y, side }: FacePlace,
): readonly Shape[] {
  return drawBlocks({
    ...{ cells, x, y, colorOf },
    faceWidth: side,
    faceHeight: side,
    repeats: side > 40 ? 3 : 1,
    hasLetters: side >= READABLE,
    alternating: false,
  })
    .filter(({ part }) => part !== 'quilting')
    .map((shape) => (shape.kind === 'text' ? enlarge(shape, side) : trim(shape)));
}

function enlarge(letter: TextShape, side: number): TextShape {
  return { ...letter, size: place(Math.max(letter.size, Math.min(side * 0.46, 24))) };
}

/** Round ends of lines would stand out over the edge of a face; dots are nothing but round ends. */
function trim(shape: PathShape): PathShape {
  return shape.d.includes('h0') ? shape : { ...shape, round: false };
}
