import { dryerLint, unmeasuredShrink } from './cautions.ts';
import type { SewFor, WashAnswer, WashInput } from './contract.ts';
import { ENGINE } from './engine.ts';
import { fromMillimetres, roundTo, toMillimetres } from './length.ts';
import { writeLinks } from './links.ts';
import { writePair } from './plan/write-plan.ts';
import { DEFAULTS } from './tables/defaults.ts';
import { advisePrewash, type FitDoubt } from './wash/advise-prewash.ts';
import { doubtSize, type SizeDoubt } from './wash/doubt-size.ts';
import { measurePull } from './wash/measure-pull.ts';
import { nearestGrid } from './wash/nearest-grid.ts';
import { fitCourses, groupSwatches } from './wash/read-swatches.ts';
import { shrinkSandwich, type WashedShrink } from './wash/shrink-sandwich.ts';
import { sewFor, washedSize } from './wash/size-washed.ts';
import { writeCourse, writeGroup, writeSandwich } from './wash/write-wash.ts';
import type { Resolved } from './wish/reading.ts';

/**
 * Before and after the wash: what swatches say, how the sandwich of the layers settles, washed
 * sizes, what to sew for a wanted size, how sure that is, and whether to prewash.
 *
 * @param resolved what `resolveWash` understood
 * @returns the body of the answer, links included
 */
export function predictWash(resolved: Resolved<WashInput>): WashAnswer {
  const { input, assumptions, query } = resolved;
  const confidence = input.confidence / 100;
  const groups = groupSwatches(input.swatches, confidence);
  const courses = fitCourses(groups);
  const shrinks = input.washes.map((washes) => shrinkSandwich(input, courses, washes));
  const [first] = shrinks;
  if (first === undefined) throw new Error('A wash needs a wash count');
  const pull = measurePull(input, courses, first);
  const doubt = doubtSize(first, groups, { confidence, washes: first.washes });
  const washed = input.layers.map((layer) => layer.prewashed);
  const side = input.block.cut ?? DEFAULTS[input.unit].cut;
  return {
    engine: ENGINE,
    swatches: groups.map((group) => writeGroup(group, { unit: input.unit, side, groups })),
    courses: courses.map((course) => writeCourse(course, input.washes)),
    sandwich: shrinks.map(writeSandwich),
    sizes: input.sewn === undefined ? [] : shrinks.map((shrink) => sizeAfter(input, shrink)),
    ...(input.wanted !== undefined && { sewFor: sizeToSew(input, input.wanted, first) }),
    pull,
    doubt: {
      ...doubt,
      percent: {
        width: roundTo(doubt.percent.width, 4),
        height: roundTo(doubt.percent.height, 4),
      },
    },
    prewash: advisePrewash(pull, washed, fitDoubt(input, doubt)),
    input,
    assumptions,
    cautions: [...(first.isMeasured ? [] : [unmeasuredShrink()]), dryerLint()],
    links: { ...writeLinks(query, { self: '/v1/wash-shrinkage' }), page: `/wash?${query}` },
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

function sizeToSew(
  input: WashInput,
  asked: NonNullable<WashInput['wanted']>,
  { usual }: WashedShrink,
): SewFor {
  const mm = (value: number) => toMillimetres(value, input.unit);
  const wanted = { width: mm(asked.width), height: mm(asked.height) };
  const cuts = input.block.cut === undefined ? input.cuts : [input.block.cut];
  const near = nearestGrid({
    wanted,
    shrink: usual,
    seam: mm(input.block.seam),
    cuts: cuts.map(mm),
  });
  const sewn = writePair(sewFor(wanted, usual), input.unit);
  if (near === undefined) return sewn;
  const nearest = {
    cut: fromMillimetres(near.cut, input.unit),
    columns: near.grid.columns,
    rows: near.grid.rows,
    sewn: writePair(near.sewn, input.unit),
    washed: writePair(near.washed, input.unit),
    fit: writePair(near.fit, input.unit),
  };
  return { ...sewn, nearest };
}

/** The doubt in millimetres against the fit asked for, of the size wanted or else sewn. */
function fitDoubt(input: WashInput, doubt: SizeDoubt): FitDoubt | undefined {
  const size = input.wanted ?? input.sewn;
  if (size === undefined || input.fit === undefined) return undefined;
  const off = (side: 'width' | 'height') =>
    (doubt.percent[side] / 100) * toMillimetres(size[side], input.unit);
  return {
    unit: input.unit,
    half: Math.max(off('width'), off('height')),
    fit: toMillimetres(input.fit, input.unit),
    ...(doubt.blocks !== undefined && { blocks: doubt.blocks }),
  };
}
