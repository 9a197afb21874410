import type { ClothNeed } from '../cloth/buy-cloth.ts';
import type { Derivation } from '../contract.ts';
import { fromMillimetres, MILLIMETRES, roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { derive, type Numbers } from './derive.ts';
import type { Explained } from './explained.ts';

/** One kind of cloth bought: how many pieces it gives, and its area, as formulas over its numbers. */
interface Batch {
  readonly gives: string;
  readonly area: string;
  /** What `gives` and what `area` names. */
  readonly ofGives: Numbers;
  readonly ofArea: Numbers;
}

/**
 * Derivations of what a purchase gives beyond its pieces and of what is wasted, for one row of `fabrics`:
 * of the length off the roll, or of what is bought of the offers of its layer.
 */
export function explainRest(
  explained: Explained,
  need: ClothNeed,
  index: number,
): readonly Derivation[] {
  const { input, plan, figures, spec } = explained;
  const row = figures.fabrics[index];
  const roll = spec.cloths[index]?.roll;
  if (row === undefined || roll === undefined) return [];
  const say = (name: string, formula: string, numbers: Numbers, value: number) =>
    derive(`fabrics.${index}.${name}`, SOURCES.practice, [formula, numbers, value]);
  const pieces = need.pieces + need.spare - (row.lacking ?? 0);
  const batches = listBatches(explained, index);
  if (batches.length === 0) return [say('spareFree', '0 * pieces', { pieces }, row.spareFree)];
  const cut = fromMillimetres(plan.block.cut, input.unit, 9);
  const along = roundTo(roll.prewash.length, 12);
  const across = roundTo(roll.prewash.width, 12);
  const gives = batches.map((batch) => batch.gives).join(' + ');
  const area = batches.map((batch) => batch.area).join(' + ');
  const ofGives = Object.assign({}, ...batches.map((batch) => batch.ofGives));
  const ofArea = Object.assign({}, ...batches.map((batch) => batch.ofArea));
  return [
    say(
      'spareFree',
      `max(0, ${gives} - pieces)`,
      { ...ofGives, cut, along, pieces },
      row.spareFree,
    ),
    say(
      'waste',
      `100 * (1 - pieces * cut ** 2 / ((${area}) * (1 - along) * (1 - across)))`,
      { pieces, cut, ...ofArea, along, across },
      row.waste,
    ),
  ];
}

function listBatches({ input, spec, figures }: Explained, index: number): readonly Batch[] {
  const row = figures.fabrics[index];
  const cloth = spec.cloths[index];
  if (row === undefined || cloth === undefined) return [];
  const inUnit = (value: number) => fromMillimetres(value, input.unit, 9);
  const lines = row.purchase ?? (row.buy.amount > 0 ? [row.buy] : []);
  const offers = input.layers[cloth.layer]?.offers ?? [];
  return lines.flatMap((line, at): readonly Batch[] => {
    const offer = 'offer' in line ? offers.find(({ id }) => id === line.offer) : undefined;
    if ('amount' in line) {
      // An amount is rounded to be read; what was bought is whole steps.
      const step = offer?.kind === 'roll' ? offer.step : inUnit(spec.step);
      const bought = (line.amount * MILLIMETRES[line.unit]) / MILLIMETRES[input.unit];
      const steps = Math.round(bought / step);
      return [
        {
          gives: 'floor((steps * step * (1 - along) - squaring) / cut + 0.0000001) * perStrip',
          area: 'steps * step * width',
          ofGives: { steps, step, squaring: inUnit(spec.squaring), perStrip: row.perStrip },
          ofArea: { steps, step, width: inUnit(cloth.roll.width) },
        },
      ];
    }
    if (offer?.kind !== 'pieces') return [];
    const across = roundTo(cloth.roll.prewash.width, 12);
    return [explainPack({ ...offer, packs: line.count }, across, at + 1)];
  });
}

/** Pieces in packs; `own` tells their numbers from those of other packs. */
function explainPack(
  {
    packs,
    count,
    width,
    length,
  }: {
    readonly packs: number;
    readonly count: number;
    readonly width: number;
    readonly length: number;
  },
  across: number,
  own: number,
): Batch {
  const numbers = {
    [`packs${own}`]: packs,
    [`each${own}`]: count,
    [`width${own}`]: width,
    [`length${own}`]: length,
  };
  const fitting = (side: string, rate: string) =>
    `floor(${side}${own} * (1 - ${rate}) / cut + 0.0000001)`;
  return {
    gives: `packs${own} * each${own} * ${fitting('width', 'across')} * ${fitting('length', 'along')}`,
    area: `packs${own} * each${own} * width${own} * length${own}`,
    ofGives: { ...numbers, across },
    ofArea: numbers,
  };
}
