import { dryerLint, unmeasuredShrink } from './cautions.ts';
import type { WashAnswer, WashInput } from './contract.ts';
import { ENGINE } from './engine.ts';
import { toMillimetres } from './length.ts';
import { writePair } from './plan/write-plan.ts';
import { adviseOnPrewash, measurePull } from './wash/measure-pull.ts';
import { fitCourses, groupSwatches } from './wash/read-swatches.ts';
import { shrinkSandwich, type WashedShrink } from './wash/shrink-sandwich.ts';
import { sewFor, washedSize } from './wash/size-washed.ts';
import { writeCourse, writeGroup, writeSandwich } from './wash/write-wash.ts';
import type { Resolved } from './wish/reading.ts';

/**
 * Before and after the wash: what swatches say, how the sandwich of the layers settles, washed
 * sizes, what to sew for a wanted size, and whether to prewash.
 *
 * @param resolved what `resolveWash` understood
 * @returns the body of the answer, links included
 */
export function predictWash(resolved: Resolved<WashInput>): WashAnswer {
  const { input, assumptions, query } = resolved;
  const groups = groupSwatches(input.swatches, input.confidence / 100);
  const courses = fitCourses(groups);
  const shrinks = input.washes.map((washes) => shrinkSandwich(input, courses, washes));
  const [first] = shrinks;
  if (first === undefined) throw new Error('A wash needs a wash count');
  const pull = measurePull(input, courses, first);
  return {
    engine: ENGINE,
    swatches: groups.map((group) => writeGroup(group, input.unit)),
    courses: courses.map((course) => writeCourse(course, input.washes)),
    sandwich: shrinks.map(writeSandwich),
    sizes: input.sewn === undefined ? [] : shrinks.map((shrink) => sizeAfter(input, shrink)),
    ...(input.wanted !== undefined && { sewFor: sizeToSew(input, first) }),
    pull,
    prewash: adviseOnPrewash(
      pull,
      input.layers.map((layer) => layer.prewashed),
    ),
    input,
    assumptions,
    cautions: [...(first.isMeasured ? [] : [unmeasuredShrink()]), dryerLint()],
    links: { self: `/v1/wash-shrinkage?${query}`, page: `/?${query}` },
  };
}

function sizeAfter(input: WashInput, shrink: WashedShrink): WashAnswer['sizes'][number] {
  const mm = (value: number) => toMillimetres(value, input.unit);
  const sewn = { width: mm(input.sewn?.width ?? 0), height: mm(input.sewn?.height ?? 0) };
  return {
    washes: shrink.washes,
    ...writePair(washedSize(sewn, shrink.usual), input.unit),
    low: writePair(washedSize(sewn, shrink.most), input.unit),
    high: writePair(washedSize(sewn, shrink.least), input.unit),
  };
}

function sizeToSew(input: WashInput, shrink: WashedShrink): { width: number; height: number } {
  const mm = (value: number) => toMillimetres(value, input.unit);
  const wanted = { width: mm(input.wanted?.width ?? 0), height: mm(input.wanted?.height ?? 0) };
  return writePair(sewFor(wanted, shrink.usual), input.unit);
}
