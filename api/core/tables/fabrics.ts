import type { FabricName } from '../contract.ts';
import { SOURCES } from '../sources.ts';

/** Percent of shrink at the first wash and dry: usual, and the range met in shops. */
export interface ShrinkRange {
  readonly low: number;
  readonly usual: number;
  readonly high: number;
}

/** What a cloth is taken for until somebody measures it. */
export interface Fabric {
  readonly name: FabricName;
  /** Mass, g/m². */
  readonly gsm: number;
  /** Thickness under the foot, mm. */
  readonly thickness: number;
  /** Along the roll, percent after one wash. */
  readonly length: ShrinkRange;
  /** Across the roll, percent after one wash. */
  readonly width: ShrinkRange;
  /** Share of the remaining shrink that is still left after each wash, 0 to 1. */
  readonly rate: number;
  /** How firmly the layer pulls for its mass: 1 for woven cloth, less for loose batting. */
  readonly grip: number;
  /** Of mass and thickness. */
  readonly source: string;
  /** Of the two shrink ranges. */
  readonly shrinkSource: string;
}

/**
 * Share of the shrink still left after each wash, where no series was measured: from 5 % at the first
 * wash to 7 % when stable gives 5 = 7·(1 − r), so r = 2/7 (SOURCES.fivePercent).
 */
export const USUAL_RATE = 2 / 7;

const range = (low: number, usual: number, high: number): ShrinkRange => ({ low, usual, high });

/**
 * Cloth and batting with figures to start from. Masses and thicknesses are common practice with no
 * source; shrink ranges lean on published figures where there are some, named in each row.
 */
export const FABRICS: readonly Fabric[] = [
  cloth('quilting-cotton', 140, 0.3, {
    length: range(2, 3.5, 6),
    width: range(1, 2.5, 4),
    shrinkSource: SOURCES.plainCotton,
  }),
  cloth('flannel', 170, 0.6, {
    length: range(3, 5, 10),
    width: range(0, 2.5, 6),
    shrinkSource: SOURCES.flannelWashed,
  }),
  cloth('denim', 340, 0.8, {
    length: range(2, 4, 8),
    width: range(1, 3, 5),
    shrinkSource: SOURCES.plainCotton,
  }),
  cloth('linen-cotton', 180, 0.4, practised(range(3, 5, 8), range(2, 4, 6))),
  cloth('plush', 260, 2, practised(range(0, 0.5, 2), range(0, 0.5, 2))),
  cloth('fleece', 240, 1.6, practised(range(0, 0.5, 2), range(0, 0.5, 2))),
  batting('cotton-batting', 150, 1.6, range(2, 4, 6)),
  batting('blend-batting', 130, 1.8, range(1, 3, 5)),
  batting('bamboo-batting', 150, 1.8, range(1, 2.5, 4)),
  batting('polyester-batting', 110, 3, range(0, 0.5, 1.5)),
];

type Shrinking = Pick<Fabric, 'length' | 'width' | 'shrinkSource'>;

function practised(length: ShrinkRange, width: ShrinkRange): Shrinking {
  return { length, width, shrinkSource: SOURCES.practice };
}

function cloth(name: FabricName, gsm: number, thickness: number, shrinking: Shrinking): Fabric {
  return {
    name,
    gsm,
    thickness,
    ...shrinking,
    rate: USUAL_RATE,
    grip: 1,
    source: SOURCES.practice,
  };
}

/** Batting has no grain that a maker can tell, so both directions share one range. */
function batting(name: FabricName, gsm: number, thickness: number, both: ShrinkRange): Fabric {
  return { ...cloth(name, gsm, thickness, practised(both, both)), grip: 0.25 };
}

/**
 * The row of a fabric.
 *
 * @example
 * findFabric('flannel').gsm // => 170
 */
export function findFabric(name: FabricName): Fabric {
  const fabric = FABRICS.find((row) => row.name === name);
  if (fabric === undefined) throw new Error(`No fabric named ${name}`);
  return fabric;
}
