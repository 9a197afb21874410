import type { BobbinChange, FabricName, Role, TimeAnswer, Unit } from '../contract.ts';
import type { EndsExpected } from './expect-ends.ts';
import type { Middle } from './find-middle.ts';
import type { Mismatch } from './predict-mismatch.ts';

/** The figures that the steps name; lengths in millimetres. */
export interface WorkFacts {
  readonly unit: Unit;
  readonly columns: number;
  readonly rows: number;
  readonly cut: number;
  readonly seam: number;
  readonly snipDepth: number;
  readonly snipPitch: number;
  readonly clearance: number;
  /** Fabrics from the top down. */
  readonly fabrics: readonly FabricName[];
  /** Roles of the layers that are prewashed. */
  readonly prewashed: readonly Role[];
  /** False where a washed test block would tell more than is known. */
  readonly isMeasured: boolean;
  /** Pieces cut, spare ones included. */
  readonly pieces: number;
  /** Prints that have blocks. */
  readonly prints: number;
  /** Letter of the print at the top left. */
  readonly topLeft: string;
  readonly snips: number;
  /** Snipped after joining instead. */
  readonly snipsJoined: number;
  /** Minutes of snipping after joining. */
  readonly minutesJoined: number;
  readonly needle: string;
  readonly chained: boolean;
  readonly bobbins: readonly BobbinChange[];
  readonly middle: Middle;
  readonly borderPasses: number;
  /** Once round the stitch line. */
  readonly perimeter: number;
  readonly mismatch: Pick<Mismatch, 'withinFromCentre' | 'withinFromOneEnd'>;
  readonly ends: EndsExpected;
  readonly ease: number;
  /** Weight of the wet quilt, in pounds with inches, in kilograms with centimetres. */
  readonly wet: number;
  readonly time: TimeAnswer;
}
