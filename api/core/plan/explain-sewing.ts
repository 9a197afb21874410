import type { Derivation } from '../contract.ts';
import { fromMillimetres, roundTo } from '../length.ts';
import { GRAMS, massUnit } from '../mass.ts';
import { SOURCES } from '../sources.ts';
import { RETAINED_WATER } from '../tables/defaults.ts';
import { derive } from './derive.ts';
import { explainTime } from './explain-time.ts';
import type { Explained } from './explained.ts';

/**
 * Derivations of fringe, weight, row ends and hours.
 */
export function explainSewing(explained: Explained): readonly Derivation[] {
  return [
    ...explainFringe(explained),
    ...explainWeight(explained),
    ...explainEnds(explained),
    ...explainTime(explained),
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
    derive('fringe.snipsPerSide', counting, [
      'ceil(cut / pitch - 0.0000001) - 1',
      { cut, pitch: input.block.snipPitch },
      fringe.snipsPerSide,
    ]),
    derive('fringe.snips', counting, [
      '4 * blocks * perSide',
      { blocks: plan.blocks, perSide },
      fringe.snips,
    ]),
    derive('fringe.snipsJoined', counting, [
      '(rows * (columns - 1) + columns * (rows - 1) + 2 * (columns + rows)) * perSide',
      { rows, columns, perSide },
      fringe.snipsJoined,
    ]),
    derive('fringe.minutes', counting, [
      'snips * minutes',
      { snips: fringe.snips, minutes },
      fringe.minutes,
    ]),
    derive('fringe.minutesJoined', counting, [
      'snips * minutes',
      { snips: fringe.snipsJoined, minutes },
      fringe.minutesJoined,
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
    derive('weight.dry', 'Mass per unit area', [
      'blocks * cut ** 2 * gsm / grams',
      numbers,
      weight.dry,
    ]),
    derive('weight.wet', SOURCES.spin, [
      'blocks * cut ** 2 * gsm * (1 + water) / grams',
      { ...numbers, water: RETAINED_WATER },
      weight.wet,
    ]),
    derive('weight.washer.drumLitres', SOURCES.drum, [
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
    derive('mismatch.rowDeviation', source, [row, numbers, mismatch.rowDeviation]),
    derive('mismatch.perEndFromOneEnd', source, [
      `sqrt(2) * ${row}`,
      numbers,
      mismatch.perEndFromOneEnd,
    ]),
    // √2 for two rows that differ, √½ for half of each row.
    derive('mismatch.perEndFromCentre', source, [row, numbers, mismatch.perEndFromCentre]),
  ];
}
