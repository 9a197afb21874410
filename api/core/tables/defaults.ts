import type { LayerInput, Unit } from '../contract.ts';

/** What stands where nothing was said, in the unit of the request. Common practice, no source. */
export interface Defaults {
  /** Side of a block where only the grid was given. */
  readonly cut: number;
  readonly seam: number;
  readonly snipPitch: number;
  readonly cuts: readonly number[];
  /** The narrow end of what the trade sells as one width, so that the cloth is enough. */
  readonly rollWidth: number;
  readonly selvage: number;
  /** Spent on a straight edge at each length bought. */
  readonly squaring: number;
  /** The step a shop sells by. */
  readonly step: number;
  /** Shorter side of what is worth keeping: a strip for the binding. */
  readonly usable: number;
  readonly drop: number;
  readonly stitchLength: number;
  readonly tail: number;
  readonly link: number;
  readonly bobbin: number;
  readonly seamDeviation: number;
  readonly cutDeviation: number;
  readonly ease: number;
}

const steps = (from: number, to: number, by: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, index) => from + index * by);

export const DEFAULTS: Readonly<Record<Unit, Defaults>> = {
  in: {
    cut: 8.5,
    seam: 1,
    snipPitch: 0.25,
    cuts: steps(6, 12, 0.5),
    rollWidth: 42,
    selvage: 0.5,
    squaring: 1,
    step: 4.5,
    usable: 2.5,
    drop: 10,
    stitchLength: 0.1,
    tail: 3,
    link: 0.5,
    bobbin: 2160,
    seamDeviation: 0.0625,
    cutDeviation: 0.0625,
    ease: 0.5,
  },
  cm: {
    cut: 22,
    seam: 2.5,
    snipPitch: 0.6,
    cuts: steps(15, 30, 1),
    rollWidth: 108,
    selvage: 1.25,
    squaring: 2.5,
    step: 10,
    usable: 6,
    drop: 25,
    stitchLength: 0.25,
    tail: 7.5,
    link: 1.25,
    bobbin: 5500,
    seamDeviation: 0.15,
    cutDeviation: 0.15,
    ease: 1.25,
  },
};

/** Extra pieces, percent. */
export const SPARE = 5;
export const WASHES = 1;
export const BORDER_PASSES = 2;
/** Prints of the default quilt: the fewest that can be laid with no two alike touching, even at corners. */
export const PRINTS = 4;
/** Water held after the spin as a share of the dry mass: the middle of EU spin class B. */
export const RETAINED_WATER = 0.5;
/** Minutes of sewing that a machine needle serves, and rotary blades that a quilt takes: common practice, no source. */
export const NEEDLE_MINUTES = 480;
export const BLADES = 1;
/** How much of its pull a layer keeps when it is pressed instead of stretched: own model. */
export const BUCKLING = 0.25;

/** The classic sandwich. */
export const DEFAULT_LAYERS: readonly Pick<LayerInput, 'role' | 'fabric'>[] = [
  { role: 'top', fabric: 'quilting-cotton' },
  { role: 'backing', fabric: 'flannel' },
];
