import type { Derivation } from '../contract.ts';
import { fromMillimetres, MILLIMETRES, roundTo } from '../length.ts';
import { countChains } from '../sewing/count-chains.ts';
import { countThreadEnds } from '../sewing/count-thread-ends.ts';
import { crossingLength } from '../sewing/plan-thread.ts';
import { SOURCES } from '../sources.ts';
import { derive, type Numbers } from './derive.ts';
import type { Explained } from './explained.ts';

/**
 * Derivations of the thread: seam lengths by stage, ratio, thread used, and bobbins.
 */
export function explainThread(explained: Explained): readonly Derivation[] {
  return [...explainSeams(explained), ...explainUse(explained)];
}

function explainSeams({ input, plan, figures }: Explained): readonly Derivation[] {
  const inUnit = (value: number) => fromMillimetres(value, input.unit, 9);
  const bulk = perBulkOf(figures.thread.unit, input.unit);
  const { columns, rows } = plan.grid;
  const cut = inUnit(plan.block.cut);
  const { thread } = figures;
  const geometry = 'Plain geometry';
  const line = { width: inUnit(plan.stitchLine.width), height: inUnit(plan.stitchLine.height) };
  return [
    derive('thread.quilting', geometry, [
      'blocks * 2 * sqrt(2) * cut / bulk',
      { blocks: plan.blocks, cut, bulk },
      thread.quilting,
    ]),
    derive('thread.joins', geometry, [
      'rows * (columns - 1) * cut / bulk',
      { rows, columns, cut, bulk },
      thread.joins,
    ]),
    derive('thread.rows', geometry, [
      '(rows - 1) * sewnWidth / bulk',
      { rows, sewnWidth: inUnit(plan.sewn.width), bulk },
      thread.rows,
    ]),
    derive('thread.border', geometry, [
      'passes * 2 * (width + height) / bulk',
      { passes: input.stitch.borderPasses, ...line, bulk },
      thread.border,
    ]),
    derive('thread.seamLength', geometry, [
      '(quilting + joins + rows + border) / bulk',
      { ...seamsOf(plan.thread.seams, inUnit), bulk },
      thread.seamLength,
    ]),
  ];
}

function seamsOf(
  seams: Explained['plan']['thread']['seams'],
  inUnit: (value: number) => number,
): Numbers {
  return {
    quilting: inUnit(seams.quilting),
    joins: inUnit(seams.joins),
    rows: inUnit(seams.rows),
    border: inUnit(seams.border),
  };
}

function explainUse({ input, spec, plan, figures }: Explained): readonly Derivation[] {
  const inUnit = (value: number) => fromMillimetres(value, input.unit, 9);
  const bulk = perBulkOf(figures.thread.unit, input.unit);
  const { thread } = figures;
  const seams = seamsOf(plan.thread.seams, inUnit);
  const ratio = roundTo(plan.thread.ratio, 12);
  const { borderPasses } = spec.stitching;
  const endsOf = (chained: boolean) =>
    countThreadEnds(countChains(plan.grid, { chained, borderPasses }));
  const ends = { chained: endsOf(true), singly: endsOf(false) };
  const spent = 'seamLength * ratio + 2 * (links * link + tails * tail)';
  const numbersOf = (count: { readonly links: number; readonly tails: number }) => ({
    seamLength: inUnit(plan.thread.seamLength),
    ratio,
    ...count,
    link: input.stitch.link,
    tail: input.stitch.tail,
    bulk,
  });
  const used = input.stitch.chained ? ends.chained : ends.singly;
  return [
    derive(
      'thread.ratio',
      SOURCES.lockstitch,
      input.stitch.ratio === undefined
        ? [
            '(2 * (quilting + border) * (1 + t / stitch) + 2 * (joins + rows - crossings) * (1 + 2 * t / stitch) + 2 * crossings * (1 + 4 * t / stitch)) / (quilting + joins + rows + border)',
            {
              ...seams,
              crossings: inUnit(crossingLength(plan.grid, plan.block)),
              t: inUnit(plan.thickness),
              stitch: input.stitch.length,
            },
            thread.ratio,
          ]
        : ['measured', { measured: input.stitch.ratio }, thread.ratio],
    ),
    derive('thread.used', SOURCES.lockstitch, [`(${spent}) / bulk`, numbersOf(used), thread.used]),
    derive('thread.singly', SOURCES.lockstitch, [
      `(${spent}) / bulk`,
      numbersOf(ends.singly),
      thread.singly,
    ]),
    derive('thread.saved', SOURCES.practice, [
      '2 * (tailsSingly * tail - links * link - tails * tail) / bulk',
      {
        tailsSingly: ends.singly.tails,
        ...ends.chained,
        link: input.stitch.link,
        tail: input.stitch.tail,
        bulk,
      },
      thread.saved,
    ]),
    derive('thread.bobbins', SOURCES.lockstitch, [
      'ceil(used / 2 / bobbin - 0.0000001)',
      { used: inUnit(plan.thread.used), bobbin: input.stitch.bobbin },
      thread.bobbins,
    ]),
  ];
}

/** How many of the request's unit make one yard or metre. */
function perBulkOf(bulk: 'yd' | 'm', unit: 'in' | 'cm'): number {
  return MILLIMETRES[bulk] / MILLIMETRES[unit];
}
