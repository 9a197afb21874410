import type { Derivation } from '../contract.ts';
import { fromMillimetres, MILLIMETRES, roundTo } from '../length.ts';
import { GRAMS, massUnit } from '../mass.ts';
import { countThreadEnds } from '../sewing/count-thread-ends.ts';
import { crossingLength } from '../sewing/plan-thread.ts';
import { SOURCES } from '../sources.ts';
import { RETAINED_WATER } from '../tables/defaults.ts';
import type { Explained } from './explained.ts';

type Numbers = Readonly<Record<string, number>>;

function say(path: string, source: string, row: readonly [string, Numbers, number]): Derivation {
  const [formula, numbers, value] = row;
  return { path, formula, numbers, value, source };
}

/**
 * Derivations of the sewing: thread, fringe, weight, row ends and hours.
 */
export function explainSewing(explained: Explained): readonly Derivation[] {
  return [
    ...explainSeams(explained),
    ...explainThread(explained),
    ...explainFringe(explained),
    ...explainWeight(explained),
    ...explainEnds(explained),
    explainTime(explained),
  ];
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
    say('thread.quilting', geometry, [
      'blocks * 2 * sqrt(2) * cut / bulk',
      { blocks: plan.blocks, cut, bulk },
      thread.quilting,
    ]),
    say('thread.joins', geometry, [
      'rows * (columns - 1) * cut / bulk',
      { rows, columns, cut, bulk },
      thread.joins,
    ]),
    say('thread.rows', geometry, [
      '(rows - 1) * sewnWidth / bulk',
      { rows, sewnWidth: inUnit(plan.sewn.width), bulk },
      thread.rows,
    ]),
    say('thread.border', geometry, [
      'passes * 2 * (width + height) / bulk',
      { passes: input.stitch.borderPasses, ...line, bulk },
      thread.border,
    ]),
    say('thread.seamLength', geometry, [
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

function explainThread({ input, spec, plan, figures }: Explained): readonly Derivation[] {
  const inUnit = (value: number) => fromMillimetres(value, input.unit, 9);
  const bulk = perBulkOf(figures.thread.unit, input.unit);
  const { thread } = figures;
  const seams = seamsOf(plan.thread.seams, inUnit);
  const ratio = roundTo(plan.thread.ratio, 12);
  const ends = countThreadEnds(plan.grid, spec.stitching.borderPasses);
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
    say(
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
    say('thread.used', SOURCES.lockstitch, [`(${spent}) / bulk`, numbersOf(used), thread.used]),
    say('thread.singly', SOURCES.lockstitch, [
      `(${spent}) / bulk`,
      numbersOf(ends.singly),
      thread.singly,
    ]),
    say('thread.saved', SOURCES.practice, [
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
    say('thread.bobbins', SOURCES.lockstitch, [
      'ceil(used / 2 / bobbin - 0.0000001)',
      { used: inUnit(plan.thread.used), bobbin: input.stitch.bobbin },
      thread.bobbins,
    ]),
  ];
}

function explainFringe({ input, plan, figures }: Explained): readonly Derivation[] {
  const { columns, rows } = plan.grid;
  const cut = fromMillimetres(plan.block.cut, input.unit, 9);
  const { fringe } = figures;
  const { perSide } = plan.snips;
  const counting = SOURCES.practice;
  const minutes = input.pace.snip;
  return [
    say('fringe.snipsPerSide', counting, [
      'ceil(cut / pitch - 0.0000001) - 1',
      { cut, pitch: input.block.snipPitch },
      fringe.snipsPerSide,
    ]),
    say('fringe.snips', counting, [
      '4 * blocks * perSide',
      { blocks: plan.blocks, perSide },
      fringe.snips,
    ]),
    say('fringe.snipsJoined', counting, [
      '(rows * (columns - 1) + columns * (rows - 1) + 2 * (columns + rows)) * perSide',
      { rows, columns, perSide },
      fringe.snipsJoined,
    ]),
    say('fringe.minutes', counting, [
      'snips * minutes',
      { snips: fringe.snips, minutes },
      fringe.minutes,
    ]),
  ];
}

function explainWeight({ input, plan, figures }: Explained): readonly Derivation[] {
  const cut = roundTo(plan.block.cut / 1000, 12);
  const gsm = input.layers.reduce((sum, layer) => sum + layer.gsm, 0);
  const grams = GRAMS[massUnit(input.unit)];
  const { weight } = figures;
  const numbers = { blocks: plan.blocks, cut, gsm, grams };
  return [
    say('weight.dry', 'Mass per unit area', [
      'blocks * cut ** 2 * gsm / grams',
      numbers,
      weight.dry,
    ]),
    say('weight.wet', SOURCES.spin, [
      'blocks * cut ** 2 * gsm * (1 + water) / grams',
      { ...numbers, water: RETAINED_WATER },
      weight.wet,
    ]),
    say('weight.washer.drumLitres', SOURCES.drum, [
      '10 * blocks * cut ** 2 * gsm / 1000',
      { blocks: plan.blocks, cut, gsm },
      weight.washer.drumLitres,
    ]),
  ];
}

function explainEnds({ input, plan, figures }: Explained): readonly Derivation[] {
  const { columns } = plan.grid;
  const { seam, cut } = input.tolerance;
  const numbers = { columns, seam, cut };
  const row = 'sqrt(4 * (columns - 1) * seam ** 2 + columns * cut ** 2)';
  const { mismatch } = figures;
  const source = SOURCES.propagation;
  return [
    say('mismatch.rowDeviation', source, [row, numbers, mismatch.rowDeviation]),
    say('mismatch.perEndFromOneEnd', source, [
      `sqrt(2) * ${row}`,
      numbers,
      mismatch.perEndFromOneEnd,
    ]),
    say('mismatch.perEndFromCentre', source, [
      `sqrt(2) * ${row} / 2`,
      numbers,
      mismatch.perEndFromCentre,
    ]),
  ];
}

function explainTime({ figures }: Explained): Derivation {
  const { total, ...stages } = figures.time;
  const formula = Object.keys(stages).join(' + ');
  return say('time.total', SOURCES.practice, [formula, stages, total]);
}

/** How many of the request's unit make one yard or metre. */
function perBulkOf(bulk: 'yd' | 'm', unit: 'in' | 'cm'): number {
  return MILLIMETRES[bulk] / MILLIMETRES[unit];
}
