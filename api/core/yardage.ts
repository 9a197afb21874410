import { rotaryCutter } from './cautions.ts';
import { fillRoll, mostFromLength, type RollOrder } from './cloth/fill-roll.ts';
import { roundPurchase } from './cloth/round-purchase.ts';
import type { RollAnswer, YardageAnswer, YardageInput } from './contract.ts';
import { ENGINE } from './engine.ts';
import { fromMillimetres, MILLIMETRES, roundTo, toMillimetres } from './length.ts';
import { writeLinks } from './links.ts';
import type { Resolved } from './wish/reading.ts';

type FabricInput = YardageInput['fabrics'][number];

/**
 * How much of each roll its pieces need, and how to cut them: one size of piece a roll.
 *
 * @param resolved what `resolveYardage` understood, so that every piece fits its roll
 * @returns the body of the answer, links included
 */
export function planYardage(resolved: Resolved<YardageInput>): YardageAnswer {
  const { input, assumptions, query } = resolved;
  return {
    engine: ENGINE,
    fabrics: input.fabrics.map((fabric) => answerRoll(fabric, input.unit)),
    input,
    assumptions,
    cautions: [rotaryCutter()],
    links: writeLinks(query, { self: '/v1/yardage', page: '/' }),
  };
}

function answerRoll(fabric: FabricInput, unit: 'in' | 'cm'): RollAnswer {
  const mm = (value: number) => toMillimetres(value, unit);
  const inUnit = (value: number) => fromMillimetres(value, unit);
  const [piece] = fabric.pieces;
  if (piece === undefined) throw new Error('A roll needs a piece');
  const order: RollOrder = {
    roll: {
      width: mm(fabric.width),
      selvage: mm(fabric.selvage),
      prewash: { length: fabric.prewash.length / 100, width: fabric.prewash.width / 100 },
    },
    width: mm(piece.width),
    length: mm(piece.length),
    count: piece.count,
    directional: piece.directional,
    squaring: mm(fabric.squaring),
  };
  const fill = fillRoll(order);
  const buy = roundPurchase(fill.length, mm(fabric.step), unit);
  const bought = buy.amount * MILLIMETRES[buy.unit] * order.roll.width;
  return {
    id: fabric.id,
    usableWidth: inUnit(fill.usableWidth),
    length: inUnit(fill.length),
    buy: [{ offer: 'roll', ...buy }],
    strips: fill.kinds.map((kind) => ({
      count: kind.strips,
      length: inUnit(kind.length),
      pieces: [{ id: piece.id, count: kind.perStrip, turned: kind.turned }],
      left: inUnit(kind.left),
    })),
    waste: roundTo(100 * (1 - (order.count * order.width * order.length) / bought), 4),
    bound: inUnit(fill.length),
    optimal: true,
    ...answerLeft(fabric, order, { unit, id: piece.id, length: fill.length }),
  };
}

function answerLeft(
  fabric: FabricInput,
  order: RollOrder,
  need: { readonly unit: 'in' | 'cm'; readonly id: string; readonly length: number },
): Pick<RollAnswer, 'enough' | 'fits'> {
  if (fabric.lengthLeft === undefined) return {};
  const left = toMillimetres(fabric.lengthLeft, need.unit);
  if (left >= need.length - 1e-6) return { enough: true };
  return { enough: false, fits: [{ id: need.id, count: mostFromLength(order, left) }] };
}
