import type { Derivation } from '../contract.ts';
import { fromMillimetres, MILLIMETRES, roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { BLADES, NEEDLE_MINUTES } from '../tables/defaults.ts';
import { derive } from './derive.ts';
import type { Explained } from './explained.ts';

/**
 * Derivations of what a class needs, where one was asked for: cloth, thread, bobbins, needles, blades.
 */
export function explainClass(explained: Explained): readonly Derivation[] {
  const { input, plan, figures } = explained;
  const all = figures.class;
  if (all === undefined) return [];
  const { pupils, thread, needles, blades } = all;
  const { time } = plan;
  const used = fromMillimetres(plan.thread.used, input.unit, 9);
  const bulk = MILLIMETRES[thread.unit] / MILLIMETRES[input.unit];
  const sewing = roundTo(time.quilt + time.joins + time.rows + time.border, 9);
  const say = (
    path: string,
    formula: string,
    numbers: Readonly<Record<string, number>>,
    value: number,
  ) => derive(`class.${path}`, SOURCES.practice, [formula, numbers, value]);
  return [
    ...all.fabrics.flatMap((_, index) => explainCloth(explained, index)),
    say('thread.used', 'pupils * used / bulk', { pupils, used, bulk }, thread.used),
    say(
      'thread.bobbins',
      'pupils * bobbins',
      { pupils, bobbins: plan.thread.bobbins },
      thread.bobbins,
    ),
    say(
      'needles.each',
      'max(1, ceil(sewing / life - 0.0000001))',
      { sewing, life: NEEDLE_MINUTES },
      needles.each,
    ),
    say('needles.all', 'pupils * each', { pupils, each: needles.each }, needles.all),
    say('blades.all', 'pupils * each', { pupils, each: BLADES }, blades.all),
  ];
}

function explainCloth(
  { input, spec, plan, figures }: Explained,
  index: number,
): readonly Derivation[] {
  const row = figures.class?.fabrics[index];
  const need = plan.cloth[index];
  const roll = spec.cloths[index]?.roll;
  if (row === undefined || need === undefined || roll === undefined) return [];
  const inUnit = (value: number) => fromMillimetres(value, input.unit, 9);
  const pupils = input.pupils ?? 1;
  const say = (
    name: string,
    formula: string,
    numbers: Readonly<Record<string, number>>,
    value: number,
  ) => derive(`class.fabrics.${index}.${name}`, SOURCES.practice, [formula, numbers, value]);
  const { perStrip } = need;
  const { strips, pieces } = row;
  const cut = inUnit(plan.block.cut);
  const along = { squaring: inUnit(spec.squaring), prewash: roundTo(roll.prewash.length, 12) };
  const exact =
    strips === 0 ? 0 : (strips * plan.block.cut + spec.squaring) / (1 - roll.prewash.length);
  return [
    say(
      'pieces',
      'pupils * (pieces + spare)',
      { pupils, pieces: need.pieces, spare: need.spare },
      pieces,
    ),
    say('strips', 'ceil(pieces / perStrip - 0.0000001)', { pieces, perStrip }, strips),
    strips === 0
      ? say('length', '0 * cut', { cut }, row.length)
      : say(
          'length',
          '(strips * cut + squaring) / (1 - prewash)',
          { strips, cut, ...along },
          row.length,
        ),
    say(
      'buy.amount',
      'ceil(length / step - 0.0000001) * step / perBulk',
      {
        length: inUnit(exact),
        step: inUnit(spec.step),
        perBulk: MILLIMETRES[row.buy.unit] / MILLIMETRES[input.unit],
      },
      row.buy.amount,
    ),
  ];
}
