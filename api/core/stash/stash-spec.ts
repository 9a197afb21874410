import type { Role, StashInput } from '../contract.ts';
import { toMillimetres } from '../length.ts';
import { DEFAULTS } from '../tables/defaults.ts';
import { type QuiltShrink, shrinkQuilt } from '../wash/shrink-quilt.ts';
import type { SizeWish } from '../wish/resolve-target.ts';
import { findWish } from '../wish/resolve-target.ts';
import type { Remnant } from './count-squares.ts';

/** Pieces on hand that are alike. */
export interface StashPiece extends Remnant {
  readonly id: string;
  readonly role: Role;
  readonly print: string;
  readonly count: number;
}

/** The shape that a quilt should have: a ratio, a size to stop at, or a grid to stop at. */
export type Aim =
  | { readonly ratio: number }
  | { readonly wish: SizeWish }
  | { readonly grid: { readonly columns: number; readonly rows: number } };

/** A stash ready to reckon with, in millimetres and fractions. */
export interface StashSpec {
  readonly pieces: readonly StashPiece[];
  readonly cuts: readonly number[];
  readonly seam: number;
  /** How many layers of each role the sandwich has. */
  readonly layers: readonly { readonly role: Role; readonly count: number }[];
  readonly aim: Aim;
  readonly touch?: 'sides' | 'corners';
  readonly shrink: QuiltShrink;
  readonly usable: number;
}

/**
 * Turns a resolved input into millimetres, once. Cut sizes that the seam leaves nothing of are passed
 * over.
 */
export function specifyStash(input: StashInput): StashSpec {
  const mm = (value: number) => toMillimetres(value, input.unit);
  const cuts = input.block.cut === undefined ? input.cuts : [input.block.cut];
  const roles = [...new Set(input.layers.map((layer) => layer.role))];
  return {
    pieces: input.pieces.map(({ id, role, print, count, ...piece }) => ({
      id,
      role,
      print,
      count,
      width: mm(piece.width),
      length: mm(piece.length),
      selvage: mm(piece.selvage),
      squaring: mm(input.squaring),
    })),
    cuts: cuts.filter((cut) => cut - 2 * input.block.seam > 1e-9).map(mm),
    seam: mm(input.block.seam),
    layers: roles.map((role) => ({
      role,
      count: input.layers.filter((layer) => layer.role === role).length,
    })),
    aim: readAim(input),
    ...(input.touch !== undefined && { touch: input.touch }),
    shrink: shrinkQuilt(input).usual,
    usable: mm(input.usable),
  };
}

function readAim({ shape, unit }: StashInput): Aim {
  if ('ratio' in shape) return shape;
  const { target } = shape;
  if ('columns' in target) return { grid: { columns: target.columns, rows: target.rows } };
  const wish = findWish(target, unit);
  return wish === undefined ? { ratio: USUAL_RATIO } : { wish };
}

/** Four wide to five high. Common practice for throws, no source. */
export const USUAL_RATIO = 0.8;

/**
 * From this width on a piece is taken to have both its selvages: the usual width of a bolt.
 *
 * @example
 * hasSelvages(44, 'in') // => true
 */
export function hasSelvages(width: number, unit: 'in' | 'cm'): boolean {
  return width >= DEFAULTS[unit].rollWidth;
}
