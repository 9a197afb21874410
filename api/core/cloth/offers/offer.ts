import type { PieceKind } from '../strips/list-levels.ts';

/** Cloth off a roll, sold by the step; lengths in millimetres. */
export interface RollOffer {
  /** What one step gives for strips, after a prewash. */
  readonly room: number;
  /** Spent once, before the first strip. */
  readonly squaring: number;
  /** The fewest steps sold, 1 or more. */
  readonly least: number;
  /** Of one step. */
  readonly cost: number;
}

/** Flat pieces sold in packs: fat quarters, pre-cut squares, remnants; lengths in millimetres. */
export interface SheetOffer {
  readonly width: number;
  readonly length: number;
  /** Sheets in one pack. */
  readonly count: number;
  /** Packs to be had; endless where absent. */
  readonly most?: number;
  /** Of one pack. */
  readonly cost: number;
}

/** What is to be cut, and what it may be cut from: off one of the rolls at most. */
export interface CoverOrder {
  readonly kinds: readonly PieceKind[];
  /** Width of every roll that can be cut, mm. */
  readonly usable: number;
  readonly rolls: readonly RollOffer[];
  readonly sheets: readonly SheetOffer[];
}
