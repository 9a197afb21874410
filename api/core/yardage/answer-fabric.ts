import type { CoverPlan } from '../cloth/offers/cheapest-roll.ts';
import { coverPieces } from '../cloth/offers/cover-pieces.ts';
import { fitPieces } from '../cloth/strips/fit-pieces.ts';
import type { Budget } from '../cloth/strips/strip-plan.ts';
import { type CutStrip, heightOf } from '../cloth/strips/trim-plan.ts';
import type { RollAnswer, StripGroup, Unit } from '../contract.ts';
import { fromMillimetres, roundTo } from '../length.ts';
import { listBought } from './list-bought.ts';
import { type FabricInput, type FabricOrder, listOffers, readFabric } from './read-fabric.ts';
import { writeCost } from './write-cost.ts';

/**
 * What to buy of one fabric, and how to cut it.
 *
 * Length off the roll is (Σ strips + squaring-up) / (1 − prewash lengthwise); waste is
 * 1 − area of the pieces / area bought, as it is after a prewash.
 *
 * @param fabric every piece fits its roll or a flat piece
 * @param allowance steps that are left for this fabric and those after it; written over
 */
export function answerFabric(fabric: FabricInput, unit: Unit, allowance: Budget): RollAnswer {
  const order = readFabric(fabric, unit);
  const plan = coverPieces(order, allowance);
  const bought = listBought(plan, order, { offers: listOffers(fabric), unit });
  const inUnit = (value: number) => fromMillimetres(value, unit);
  const write = (strips: readonly CutStrip[], width: number): readonly StripGroup[] =>
    strips.map((strip) => writeStrip(strip, fabric, { width, unit }));
  const strips = plan.roll?.strips ?? [];
  const length = asBought(order, heightOf(strips));
  const placed = order.kinds.reduce(
    (sum, { across, along }, kind) => sum + across * along * (plan.placed[kind] ?? 0),
    0,
  );
  return {
    id: fabric.id,
    usableWidth: inUnit(order.usable),
    length: inUnit(length),
    buy: bought.lines,
    strips: write(strips, order.usable),
    ...(order.sheets.length > 0 && {
      sheets: plan.sheets.map((sheet) => ({
        offer: fabric.offers?.[order.sheetPlaces[sheet.at] ?? -1]?.id ?? '',
        count: sheet.times,
        strips: write(sheet.strips, order.sheets[sheet.at]?.width ?? 0),
      })),
    }),
    waste:
      bought.area === 0 ? 0 : roundTo(100 * (1 - placed / afterPrewash(order, bought.area)), 4),
    bound: inUnit(asBought(order, plan.rollBound)),
    optimal: fabric.offers === undefined ? plan.rollBound >= heightOf(strips) - 2e-3 : plan.optimal,
    ...(fabric.offers && { cost: writeCost(plan, order, { bought, unit }) }),
    ...answerEnough(fabric, order, { plan, length, allowance }),
  };
}

/** Length of roll for a length of strips, mm; none for none. */
function asBought({ squaring, roll }: FabricOrder, strips: number): number {
  return strips === 0 ? 0 : (strips + squaring) / (1 - roll.prewash.length);
}

function afterPrewash({ roll }: FabricOrder, area: number): number {
  return area * (1 - roll.prewash.length) * (1 - roll.prewash.width);
}

function writeStrip(
  { times, height, pieces, used }: CutStrip,
  fabric: FabricInput,
  { width, unit }: { readonly width: number; readonly unit: Unit },
): StripGroup {
  return {
    count: times,
    length: fromMillimetres(height, unit),
    pieces: pieces.map(({ kind, count, turned }) => ({
      id: fabric.pieces[kind]?.id ?? '',
      count,
      turned,
    })),
    left: fromMillimetres(Math.max(0, width - used), unit),
  };
}

/** Whether the cloth there is gives all, and else what it gives. */
function answerEnough(
  fabric: FabricInput,
  order: FabricOrder,
  {
    plan,
    length,
    allowance,
  }: { readonly plan: CoverPlan; readonly length: number; readonly allowance: Budget },
): Pick<RollAnswer, 'enough' | 'fits'> {
  const name = (counts: readonly number[]) =>
    fabric.pieces.map(({ id }, kind) => ({ id, count: counts[kind] ?? 0 }));
  const isWhole = order.kinds.every((kind, at) => kind.count === plan.placed[at]);
  const isShort = order.lengthLeft !== undefined && order.lengthLeft < length - 1e-6;
  if (isWhole && !isShort) return order.lengthLeft === undefined ? {} : { enough: true };
  if (!isShort) return { enough: false, fits: name(plan.placed) };
  return { enough: false, fits: name(fitLeft(order, plan, allowance)) };
}

/** Pieces on sheets, and those of the rest that what is left on the bolt gives. */
function fitLeft(order: FabricOrder, plan: CoverPlan, allowance: Budget): readonly number[] {
  const onRoll = order.kinds.map((kind, at) => {
    const count = (plan.roll?.strips ?? []).reduce(
      (sum, { times, pieces }) =>
        sum + times * (pieces.find((piece) => piece.kind === at)?.count ?? 0),
      0,
    );
    return { ...kind, count };
  });
  const room = (order.lengthLeft ?? 0) * (1 - order.roll.prewash.length) - order.squaring;
  const given = fitPieces(onRoll, { usable: order.usable, room }, allowance);
  return plan.placed.map((placed, at) => placed - (onRoll[at]?.count ?? 0) + (given[at] ?? 0));
}
