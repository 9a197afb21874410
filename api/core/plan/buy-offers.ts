import { leaveOver } from '../cloth/leave-over.ts';
import type { Rectangle } from '../cloth/leave-rows.ts';
import type { CoverPlan } from '../cloth/offers/cheapest-roll.ts';
import { coverPieces } from '../cloth/offers/cover-pieces.ts';
import { spendSteps } from '../cloth/strips/spend-steps.ts';
import type { Budget } from '../cloth/strips/strip-plan.ts';
import type { CutStrip } from '../cloth/strips/trim-plan.ts';
import type { Roll } from '../cloth/usable-width.ts';
import type { ClothBought, ClothCost, ClothOfferInput } from '../contract.ts';
import type { PlanSpec } from '../wish/plan-spec.ts';
import { listBought } from '../yardage/list-bought.ts';
import { type FabricOrder, readOffers } from '../yardage/read-fabric.ts';
import { writeCost } from '../yardage/write-cost.ts';
import type { Plan } from './reckon-plan.ts';

/** What to buy of one print where its layer has offers. */
export interface OfferPurchase {
  readonly lines: readonly ClothBought[];
  readonly cost: ClothCost;
  /** Fraction of the cloth bought that is in no piece. */
  readonly waste: number;
  readonly spareFree: number;
  /** Rectangles left, mm. */
  readonly left: readonly (Rectangle & { readonly count: number })[];
  /** Pieces that the offers do not give. */
  readonly lacking: number;
}

/** Steps for all prints of one plan, so that none takes long: counted, never timed. */
const STEPS = 40_000;
/** Steps that it takes to write out one purchase, and what is left to reckon with in any case. */
const TOLL = 300;
const LEAST = 8000;

/**
 * The cheapest purchase (least cloth where nothing has a price) for each print whose layer has offers,
 * each print by itself, by `coverPieces`. Only the chosen plan is bought so: options are weighed by cloth
 * off the roll. All purchases share the steps of one plan.
 *
 * @param plan for the spec; its square fits something on offer for each layer
 * @returns in the order of the plan's cloth; nothing for a print without offers
 */
export function buyOffers(
  spec: PlanSpec,
  { cloth, block }: Pick<Plan, 'cloth' | 'block'>,
): readonly (OfferPurchase | undefined)[] {
  const known = new Map<Roll, Map<number, OfferPurchase>>();
  let waiting = spec.cloths.filter(({ layer }) => spec.layers[layer]?.offers !== undefined).length;
  const allowance = { steps: Math.max(LEAST, STEPS - TOLL * waiting) };
  return spec.cloths.map(({ layer, roll }, index) => {
    const offers = spec.layers[layer]?.offers;
    if (offers === undefined) return undefined;
    const { pieces = 0, spare = 0 } = cloth[index] ?? {};
    const count = pieces + spare;
    const sameRoll = known.get(roll) ?? new Map<number, OfferPurchase>();
    const share = allowance.steps / waiting;
    waiting -= 1;
    const purchase =
      sameRoll.get(count) ??
      spendSteps(allowance, share, (budget) =>
        buySquares(spec, { offers, roll, cut: block.cut, count }, budget),
      );
    known.set(roll, sameRoll.set(count, purchase));
    return purchase;
  });
}

interface SquaresWanted {
  readonly offers: readonly ClothOfferInput[];
  readonly roll: Roll;
  readonly cut: number;
  readonly count: number;
}

const NONE: CoverPlan = {
  packs: [],
  sheets: [],
  placed: [0],
  cost: 0,
  bound: 0,
  optimal: true,
  rollBound: 0,
};

function buySquares(
  spec: PlanSpec,
  { offers, roll, cut, count }: SquaresWanted,
  allowance: Budget,
): OfferPurchase {
  const { unit, squaring, usable } = spec;
  const kind = { across: cut, along: cut, count, canTurn: false };
  const order = { ...readOffers(offers, { roll, squaring, unit }), kinds: [kind] };
  const plan = count === 0 ? NONE : coverPieces(order, allowance);
  const bought = listBought(plan, order, { offers, unit });
  const placed = plan.placed[0] ?? 0;
  const area = bought.area * (1 - roll.prewash.length) * (1 - roll.prewash.width);
  return {
    lines: bought.lines,
    cost: writeCost(plan, order, { bought, unit }),
    waste: area === 0 ? 0 : 1 - (placed * cut ** 2) / area,
    lacking: count - placed,
    ...leavePurchase(plan, order, { cut, usable }),
  };
}

/** Squares that a purchase gives beyond those wanted, and what it leaves: of the roll, then of the packs. */
function leavePurchase(
  plan: CoverPlan,
  order: FabricOrder,
  { cut, usable }: { readonly cut: number; readonly usable: number },
): Pick<OfferPurchase, 'spareFree' | 'left'> {
  const offer = order.rolls[plan.roll?.at ?? -1];
  const length = offer === undefined ? 0 : (plan.roll?.steps ?? 0) * offer.room - offer.squaring;
  const onRoll = {
    cloth: { width: order.usable, length },
    squares: countSquares(plan.roll?.strips ?? []),
    count: length > 0 ? 1 : 0,
  };
  const onSheets = order.sheets.flatMap((cloth, at) => {
    const own = plan.sheets.filter((sheet) => sheet.at === at);
    const sheets = own.map(({ times, strips }) => {
      return { cloth, squares: countSquares(strips), count: times };
    });
    const cutUp = own.reduce((sum, { times }) => sum + times, 0);
    const whole = (plan.packs[at] ?? 0) * cloth.count - cutUp;
    return [...sheets, { cloth, squares: 0, count: whole }];
  });
  const rests = [onRoll, ...onSheets].flatMap(({ cloth, squares, count }) =>
    count > 0 ? [{ count, ...leaveOver(cloth, { cut, squares, usable }) }] : [],
  );
  return {
    spareFree: rests.reduce((sum, { spareFree, count }) => sum + spareFree * count, 0),
    left: rests.flatMap(({ left, count }) => left.map((rectangle) => ({ ...rectangle, count }))),
  };
}

function countSquares(strips: readonly CutStrip[]): number {
  return strips.reduce(
    (sum, { times, pieces }) => sum + times * pieces.reduce((own, { count }) => own + count, 0),
    0,
  );
}
