import { listAlone } from '../strips/list-alone.ts';
import { listLevels } from '../strips/list-levels.ts';
import { spendSteps } from '../strips/spend-steps.ts';
import type { Budget, StripProblem } from '../strips/strip-plan.ts';
import { type CoverPlan, cheapestRoll } from './cheapest-roll.ts';
import type { Cover } from './cover-programme.ts';
import { layOut } from './lay-out.ts';
import { listFillings, type SheetFillings } from './list-fillings.ts';
import type { CoverOrder } from './offer.ts';
import { pilePacks } from './pile-packs.ts';
import { proveCover } from './prove-cover.ts';
import { relaxCover } from './relax-cover.ts';

/** What one order may take, where nobody says less. */
const USUAL_STEPS = 4_000_000;

/** Counted, never timed. */
const RELAX = 200_000;
/** Steps of the simplex that a programme takes, near enough, each a thirty-second of a step an entry. */
const PIVOTS = 60 / 32;
const EFFORT = { list: 60_000, search: 300_000, patterns: 1200 } as const;

/** What leaving out cloth costs beside buying any, in covers that cannot be whole. */
const LEFT_OUT = 1000;

/**
 * The cheapest purchase that gives all pieces: any number of packs of sheets, and a length off one of
 * the rolls at most. Each sheet is cut as a roll is: in strips across its width, as tall as their
 * tallest piece.
 *
 * Each roll is tried, and none: a programme of whole numbers over everything that can be bought and
 * every way to cut it, solved by `proveCover`; a roll alone by `cutLeast`.
 *
 * Where the steps run out before anything is found, packs are taken one after the other (`pilePacks`).
 *
 * @param order every kind fits a roll or a sheet
 * @param allowance steps that are left for this and whatever comes after it; written over
 * @returns the cheapest plan found; where no purchase gives all, the one that leaves out least cloth
 * found, with `bound` 0 and a `cost` that means nothing
 */
export function coverPieces(
  order: CoverOrder,
  allowance: Budget = { steps: USUAL_STEPS },
): CoverPlan {
  const fillings = listAll(order, allowance);
  const alone = cheapestRoll(order, allowance);
  if (order.sheets.length === 0 && alone !== undefined) return alone;
  const plan = mixOffers(order, fillings, { alone, allowance });
  if (plan !== undefined) return plan;
  const piled = pilePacks(order, fillings, allowance);
  const rest = { bound: 0, optimal: false, rollBound: 0 };
  if (piled.isWhole) return { ...piled.plan, cost: piled.cost, ...rest, bound: boundByArea(order) };
  return leaveOut(order, fillings, allowance) ?? { ...piled.plan, cost: piled.cost, ...rest };
}

/** The ways to cut each sheet: as many as a programme of all of them can be solved for in time. */
function listAll({ kinds, sheets }: CoverOrder, allowance: Budget): readonly SheetFillings[] {
  const needs = kinds.length + 2 * sheets.length;
  const columns = Math.max(0, allowance.steps) / (PIVOTS * needs);
  return sheets.map((sheet, at) =>
    spendSteps(allowance, allowance.steps / (2 * (sheets.length - at)), (budget) =>
      listFillings(kinds, sheet, { most: columns / sheets.length, allowance: budget }),
    ),
  );
}

/** The cheapest purchase of all, the roll alone included; nothing where no purchase gives all. */
function mixOffers(
  order: CoverOrder,
  fillings: readonly SheetFillings[],
  { alone, allowance }: { readonly alone: CoverPlan | undefined; readonly allowance: Budget },
): CoverPlan | undefined {
  let best = alone;
  let bound = Number.POSITIVE_INFINITY;
  for (const at of [...order.rolls.keys(), -1]) {
    const { cover, patterns } = coverOf(order, fillings, at);
    const relaxation = spendSteps(allowance, RELAX, (budget) =>
      relaxCover(cover, patterns, budget),
    );
    if (relaxation === undefined) continue;
    const below = best?.cost ?? Number.POSITIVE_INFINITY;
    const proof = proveCover(cover, relaxation, { below, effort: EFFORT, allowance });
    bound = Math.min(bound, proof.bound);
    if (proof.found === undefined) continue;
    const plan = layOut(order, fillings, { cover, found: proof.found, at }, allowance);
    best = { ...plan, cost: proof.found.cost, bound: 0, optimal: false, rollBound: 0 };
  }
  if (best === undefined) return undefined;
  const isWhole = fillings.every(({ isComplete }) => isComplete);
  const proven = isWhole ? Math.min(bound, best.cost) : boundByArea(order);
  return { ...best, bound: proven, optimal: best.cost <= proven + 2e-3, rollBound: 0 };
}

/** The purchase that leaves out least cloth, where none gives all; nothing where the steps ran out. */
function leaveOut(
  order: CoverOrder,
  fillings: readonly SheetFillings[],
  allowance: Budget,
): CoverPlan | undefined {
  const costs = [...order.rolls, ...order.sheets].map((offer) => offer.cost);
  const dear = LEFT_OUT * Math.max(...costs, 1);
  const largest = Math.max(...order.kinds.map(({ across, along }) => across * along));
  const leftOut = order.kinds.map(({ across, along }) => (dear * across * along) / largest);
  const plans = [...order.rolls.keys(), -1].flatMap((at) => {
    const { cover, patterns } = coverOf(order, fillings, at);
    const relaxation = spendSteps(allowance, RELAX, (budget) =>
      relaxCover({ ...cover, leftOut }, patterns, budget),
    );
    if (relaxation === undefined) return [];
    const asked = { below: Number.POSITIVE_INFINITY, effort: EFFORT, allowance };
    const { found } = proveCover({ ...cover, leftOut }, relaxation, asked);
    return found
      ? [
          {
            cost: found.cost,
            plan: layOut(order, fillings, { cover: { ...cover, leftOut }, found, at }, allowance),
          },
        ]
      : [];
  });
  if (plans.length === 0) return undefined;
  const best = plans.reduce((one, other) => (other.cost < one.cost ? other : one));
  return { ...best.plan, cost: best.cost, bound: 0, optimal: false, rollBound: 0 };
}

/** A purchase off one roll, or none, with strips of one kind to start from. */
function coverOf(order: CoverOrder, fillings: readonly SheetFillings[], at: number) {
  const demand = order.kinds.map((kind) => kind.count);
  const sheets = order.sheets.map((offer, own) => ({
    offer,
    fillings: fillings[own]?.fillings ?? [],
  }));
  const offer = order.rolls[at];
  if (offer === undefined) return { cover: { demand, sheets } satisfies Cover, patterns: [] };
  const levels = listLevels(order.kinds, order.usable);
  const problem: StripProblem = { usable: order.usable, levels, demand };
  const patterns = listAlone(problem);
  return { cover: { demand, sheets, roll: { offer, problem } } satisfies Cover, patterns };
}

/** All cloth wanted, at the price of the cheapest cloth. */
function boundByArea({ kinds, usable, rolls, sheets }: CoverOrder): number {
  const wanted = kinds.reduce((sum, { across, along, count }) => sum + across * along * count, 0);
  const rates = [
    ...rolls.map(({ cost, room }) => cost / (usable * room)),
    ...sheets.map(({ cost, width, length, count }) => cost / (width * length * count)),
  ];
  return wanted * Math.min(...rates);
}
