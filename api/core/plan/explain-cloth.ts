import type { ClothNeed } from '../cloth/buy-cloth.ts';
import type { Derivation } from '../contract.ts';
import { fromMillimetres, MILLIMETRES, roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { explainRest } from './explain-rest.ts';
import type { Explained } from './explained.ts';

/**
 * Derivations of the cloth: usable width, pieces in a strip, strips, length, what to buy, what that
 * gives beyond the pieces and what is wasted, for each row of `fabrics`.
 */
export function explainCloth(explained: Explained): readonly Derivation[] {
  return explained.plan.cloth.flatMap((need, index) => explainNeed(explained, need, index));
}

function explainNeed(explained: Explained, need: ClothNeed, index: number): readonly Derivation[] {
  const { input, spec, plan, figures } = explained;
  const row = figures.fabrics[index];
  const roll = spec.cloths[index]?.roll;
  if (row === undefined || roll === undefined) return [];
  const inUnit = (value: number) => fromMillimetres(value, input.unit, 9);
  const say = (
    name: string,
    formula: string,
    numbers: Readonly<Record<string, number>>,
    value: number,
  ): Derivation => ({
    path: `fabrics.${index}.${name}`,
    formula,
    numbers,
    value,
    source: SOURCES.practice,
  });
  const cut = inUnit(plan.block.cut);
  const width = inUnit(roll.width);
  const pieces = need.pieces + need.spare;
  const usable = inUnit(need.usableWidth);
  const step = inUnit(spec.step);
  const perBulk = MILLIMETRES[need.buy.unit] / MILLIMETRES[input.unit];
  return [
    say(
      'spare',
      'ceil(pieces * percent / 100 - 0.0000001)',
      { pieces: need.pieces, percent: input.spare },
      row.spare,
    ),
    say(
      'usableWidth',
      'width * (1 - prewash) - 2 * selvage',
      { width, prewash: roundTo(roll.prewash.width, 12), selvage: inUnit(roll.selvage) },
      row.usableWidth,
    ),
    say('perStrip', 'floor(usable / cut + 0.0000001)', { usable, cut }, row.perStrip),
    say(
      'strips',
      'ceil(pieces / perStrip - 0.0000001)',
      { pieces, perStrip: row.perStrip },
      row.strips,
    ),
    say(
      'length',
      row.strips === 0 ? '0 * cut' : '(strips * cut + squaring) / (1 - prewash)',
      row.strips === 0
        ? { cut }
        : {
            strips: row.strips,
            cut,
            squaring: inUnit(spec.squaring),
            prewash: roundTo(roll.prewash.length, 12),
          },
      row.length,
    ),
    say(
      'buy.amount',
      'ceil(length / step - 0.0000001) * step / perBulk',
      { length: inUnit(need.length), step, perBulk },
      row.buy.amount,
    ),
    ...explainRest(explained, need, index),
  ];
}
