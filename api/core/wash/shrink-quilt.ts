import type { Grain, LayerInput } from '../contract.ts';
import { type Fabric, findFabric } from '../tables/fabrics.ts';
import { courseThrough, type ShrinkCourse, shrinkAfter, shrinkLeft } from './follow-course.ts';
import { settleSandwich, type WashLayer } from './settle-sandwich.ts';

/** The courses that swatches of a cloth allow: the likeliest, and the ends of its interval. */
export interface CourseRange {
  readonly low: ShrinkCourse;
  readonly usual: ShrinkCourse;
  readonly high: ShrinkCourse;
}

/** A layer to be washed; courses fitted to swatches take the place of its rates. */
export type WashedLayer = Pick<
  LayerInput,
  'fabric' | 'shrink' | 'shrinkWashes' | 'prewashed' | 'gsm' | 'role'
> & {
  readonly courses?: { readonly length?: CourseRange; readonly width?: CourseRange };
};

/** A fraction for each direction, positive when the quilt gets smaller. */
export interface QuiltShrink {
  readonly width: number;
  readonly height: number;
}

export interface ShrinkRequest {
  readonly layers: readonly WashedLayer[];
  readonly grain: Grain;
  readonly washes: number;
  /** Courses of a quilted test block, which beat what the layers make one expect. */
  readonly sandwich?: SandwichCourses;
}

/** What a quilted test block says along and across its cloth. */
export interface SandwichCourses {
  readonly length?: CourseRange;
  readonly width?: CourseRange;
}

/**
 * What an eighth of an inch on ten inches is worth: a rate that somebody measured is not known
 * closer than this, as a fraction.
 */
export const READING = 0.00625;

/**
 * How far a whole quilt shrinks in its first n washes, with the least and the most to expect.
 *
 * Each layer follows its course over the washes, less what a prewash took; the sandwich settles
 * (see `settleSandwich`). With the grain aligned the height takes the rate along the roll and the
 * width that across it; with every other block turned both take the mean of the two. The doubt:
 * least is the weighted mean of the layers' lowest rates, most the greatest of their highest.
 * A layer whose rates differ from the table's counts as measured, to an eighth of an inch on ten.
 * A measured sandwich takes the place of the model in each direction that it was measured in.
 *
 * @returns fractions
 */
export function shrinkQuilt(request: ShrinkRequest): {
  readonly usual: QuiltShrink;
  readonly least: QuiltShrink;
  readonly most: QuiltShrink;
} {
  return {
    usual: shrinkAs(request, 'usual'),
    least: shrinkAs(request, 'low', 1),
    most: shrinkAs(request, 'high', 0),
  };
}

type Doubt = 'low' | 'usual' | 'high';

function shrinkAs(request: ShrinkRequest, doubt: Doubt, buckling?: number): QuiltShrink {
  const settle = (direction: 'length' | 'width') => {
    const measured = request.sandwich?.[direction]?.[doubt];
    return measured === undefined
      ? settleSandwich(layerPulls(request, direction, doubt), buckling)
      : shrinkAfter(measured, request.washes);
  };
  const along = settle('length');
  const across = settle('width');
  if (request.grain === 'aligned') return { width: across, height: along };
  const mean = (along + across) / 2;
  return { width: mean, height: mean };
}

/**
 * What each layer wants to shrink in one direction of the cloth, and with which weight.
 *
 * @returns one entry a layer, rates as fractions
 */
export function layerPulls(
  request: Pick<ShrinkRequest, 'layers' | 'washes'>,
  direction: 'length' | 'width',
  doubt: Doubt = 'usual',
): readonly WashLayer[] {
  return request.layers.map((layer) => {
    const fabric = findFabric(layer.fabric);
    const course =
      layer.courses?.[direction]?.[doubt] ??
      courseThrough(
        firstShrink(layer, { fabric, direction, doubt }),
        layer.shrinkWashes,
        fabric.rate,
      );
    const rate = shrinkLeft(course, layer.prewashed ? 1 : 0, request.washes);
    return { rate, weight: layer.gsm * fabric.grip };
  });
}

function firstShrink(
  layer: WashedLayer,
  asked: {
    readonly fabric: Fabric;
    readonly direction: 'length' | 'width';
    readonly doubt: Doubt;
  },
): number {
  const { fabric, direction, doubt } = asked;
  const given = layer.shrink[direction] / 100;
  if (isMeasured(layer, fabric)) {
    return given + { low: -READING, usual: 0, high: READING }[doubt];
  }
  return doubt === 'usual' ? given : fabric[direction][doubt] / 100;
}

/**
 * Whether a layer's rates are the caller's own, rather than the fabric table's.
 *
 * @example
 * isMeasured({ shrink: { length: 4.2, width: 2.5 }, shrinkWashes: 1 }, findFabric('quilting-cotton')) // => true
 */
export function isMeasured(
  layer: Pick<LayerInput, 'shrink' | 'shrinkWashes'>,
  fabric: Fabric,
): boolean {
  return (
    layer.shrinkWashes !== 1 ||
    layer.shrink.length !== fabric.length.usual ||
    layer.shrink.width !== fabric.width.usual
  );
}
