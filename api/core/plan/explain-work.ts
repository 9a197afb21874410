import type { Derivation } from '../contract.ts';
import { fromMillimetres, MILLIMETRES, roundTo } from '../length.ts';
import { QUANTILES } from '../sewing/expect-ends.ts';
import { SOURCES } from '../sources.ts';
import { derive } from './derive.ts';
import type { Explained } from './explained.ts';

/**
 * Derivations of the order of work: thread of the chains, the middle of a row, the perimeter, and what to
 * expect of row ends.
 */
export function explainWork(explained: Explained): readonly Derivation[] {
  return [...explainChains(explained), ...explainPlaces(explained), ...explainUnpicking(explained)];
}

function explainChains({ input, plan, figures }: Explained): readonly Derivation[] {
  const bulk = MILLIMETRES[figures.thread.unit] / MILLIMETRES[input.unit];
  const { link, tail } = input.stitch;
  return figures.work.chains.map(({ thread }, index) => {
    const { chains = 0, seams = 0, inSeams = 0 } = plan.thread.chains[index] ?? {};
    return derive(`work.chains.${index}.thread`, SOURCES.lockstitch, [
      '(inSeams / chains + 2 * ((seams - 1) * link + 2 * tail)) / bulk',
      { inSeams: fromMillimetres(inSeams, input.unit, 9), chains, seams, link, tail, bulk },
      thread,
    ]);
  });
}

function explainPlaces({ input, plan, figures }: Explained): readonly Derivation[] {
  const { columns } = plan.grid;
  const { middle, perimeter } = figures.work;
  const counting = 'Plain geometry';
  const width = fromMillimetres(plan.stitchLine.width, input.unit, 9);
  const height = fromMillimetres(plan.stitchLine.height, input.unit, 9);
  return [
    derive('work.middle.from', counting, ['ceil(columns / 2)', { columns }, middle.from]),
    derive('work.middle.to', counting, ['floor(columns / 2) + 1', { columns }, middle.to]),
    derive('work.perimeter', counting, ['2 * (width + height)', { width, height }, perimeter]),
  ];
}

function explainUnpicking({ input, plan, figures }: Explained): readonly Derivation[] {
  const { mismatch } = figures;
  const inUnit = (value: number) => fromMillimetres(value, input.unit, 9);
  const fromCentre = inUnit(plan.mismatch.fromCentre);
  const fromOneEnd = inUnit(plan.mismatch.fromOneEnd);
  const { half, most } = QUANTILES;
  const { rows } = plan.grid;
  const say = (
    name: keyof typeof mismatch,
    formula: string,
    numbers: Readonly<Record<string, number>>,
  ) => derive(`mismatch.${name}`, SOURCES.propagation, [formula, numbers, mismatch[name]]);
  return [
    say('half', 'quantile * deviation', { quantile: half, deviation: fromCentre }),
    say('most', 'quantile * deviation', { quantile: most, deviation: fromCentre }),
    say('mostFromOneEnd', 'quantile * deviation', { quantile: most, deviation: fromOneEnd }),
    say('ends', '2 * (rows - 1)', { rows }),
    say('unpick', '2 * (rows - 1) * (1 - within)', {
      rows,
      within: roundTo(plan.mismatch.withinFromCentre, 12),
    }),
    say('unpickFromOneEnd', '(rows - 1) * (1 - within)', {
      rows,
      within: roundTo(plan.mismatch.withinFromOneEnd, 12),
    }),
  ];
}
