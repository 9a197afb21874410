import type { Unit } from '../../contract.ts';
import type { Middle } from '../../sewing/find-middle.ts';
import type { Box } from '../shape.ts';

/** What the drawings of the steps show of a plan; lengths in millimetres. */
export interface StepScene {
  readonly unit: Unit;
  readonly cut: number;
  readonly seam: number;
  readonly snipDepth: number;
  readonly snipPitch: number;
  readonly columns: number;
  readonly rows: number;
  /** A string a row from the top, a letter a block. */
  readonly cells: readonly string[];
  readonly middle: Middle;
  /** Layers of the sandwich. */
  readonly layers: number;
  readonly chained: boolean;
  readonly borderPasses: number;
  /** Of the roll that the backing is cut from. */
  readonly usableWidth: number;
  readonly perStrip: number;
  readonly colorOf: (print: number) => string | undefined;
}

/** Every step is drawn on one board, so that they stand alike side by side. */
export const BOARD: Box = { x: 0, y: 0, width: 300, height: 200 };

/** Undyed flannel, and ink that reads on any cloth. */
export const FLANNEL = '#f5eddc';
export const INK = '#1b2233';
