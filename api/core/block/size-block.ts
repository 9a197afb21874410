import { tidy } from '../length.ts';

/** One square block; every length in millimetres. */
export interface Block {
  /** Side as cut. */
  readonly cut: number;
  /** Seam allowance. */
  readonly seam: number;
  readonly snipDepth: number;
  readonly snipPitch: number;
}

/**
 * The face of a block: what shows between its stitching lines, f = c − 2s.
 * Plain geometry: a seam allowance is taken at both sides. Zero or less means that the seam eats
 * the face and the block is impossible.
 *
 * @param block cut side and seam allowance, mm
 * @returns mm
 *
 * @example
 * faceOf({ cut: 215.9, seam: 25.4 }) // => 165.1
 */
export function faceOf(block: Pick<Block, 'cut' | 'seam'>): number {
  return tidy(block.cut - 2 * block.seam);
}
