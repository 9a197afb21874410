import { cutLeast } from '../strips/cut-least.ts';
import { type Level, type PieceKind, ROOM_SLACK } from '../strips/list-levels.ts';
import type { Budget } from '../strips/strip-plan.ts';
import { countSteps, fitsRoll } from './cheapest-roll.ts';
import { writeProgramme } from './cover-programme.ts';
import type { Filling } from './keep-largest.ts';
import { layOut, type PurchasePlan } from './lay-out.ts';
import type { SheetFillings } from './list-fillings.ts';
import type { CoverOrder } from './offer.ts';

/** Fillings of one sheet that are looked at, beside those of one kind alone. */
const MOST = 16;

/**
 * A purchase made sheet by sheet, each the one whose pieces are most cloth for its cost, with what fits
 * the roll off the roll: quick, and never refused, for when searching was too much.
 *
 * @param fillings of each sheet
 * @param allowance steps left for this and whatever comes after it; written over
 * @returns a plan that places all that the sheets and the roll can give this way, and what it costs
 */
export function pilePacks(
  order: CoverOrder,
  fillings: readonly SheetFillings[],
  allowance: Budget,
): { readonly plan: PurchasePlan; readonly cost: number; readonly isWhole: boolean } {
  const onRoll = order.kinds.map((kind) => order.rolls.length > 0 && fitsRoll(kind, order.usable));
  const only = (isRoll: boolean): readonly PieceKind[] =>
    order.kinds.map((kind, at) => (onRoll[at] === isRoll ? kind : { ...kind, count: 0 }));
  const flat = pileSheets({ ...order, kinds: only(false) }, fillings);
  const cut = cutLeast(only(true), order.usable, allowance);
  const steps = order.rolls.map((offer) => countSteps(offer, cut.length));
  const prices = order.rolls.map((offer, at) => (steps[at] ?? 0) * offer.cost);
  const at = prices.indexOf(Math.min(...prices));
  const roll = cut.length > 0 ? { at, steps: steps[at] ?? 0, strips: cut.strips } : undefined;
  const placed = order.kinds.map((kind, own) =>
    onRoll[own] === true ? kind.count : (flat.placed[own] ?? 0),
  );
  return {
    plan: { ...flat, placed, ...(roll && { roll }) },
    cost: (roll ? (prices[at] ?? 0) : 0) + costOf(order, flat.packs),
    isWhole: order.kinds.every((kind, own) => placed[own] === kind.count),
  };
}

function costOf({ sheets }: CoverOrder, packs: readonly number[]): number {
  return packs.reduce((sum, count, at) => sum + count * (sheets[at]?.cost ?? 0), 0);
}

/** A filling with the kinds that are in it alone: most are not. */
interface Option {
  readonly filling: Filling;
  readonly given: readonly (readonly [kind: number, count: number])[];
}

function listGiven(filling: Filling): Option {
  return { filling, given: [...filling.counts.entries()].filter(([, count]) => count > 0) };
}

interface Choice {
  readonly sheet: number;
  readonly filling: Filling;
  /** How often. */
  readonly times: number;
}

function pileSheets(order: CoverOrder, all: readonly SheetFillings[]): PurchasePlan {
  const options = order.sheets.map((sheet, at) => {
    const few = (all[at]?.fillings ?? []).slice(0, MOST);
    return [...few, ...listAlone(order.kinds, sheet, all[at]?.levels ?? [])].map(listGiven);
  });
  const stock = order.sheets.map(({ most = Number.POSITIVE_INFINITY, count }) => most * count);
  let wanted = order.kinds.map((kind) => kind.count);
  const chosen: Choice[] = [];
  for (;;) {
    const best = chooseSheet(order, { options, stock, wanted });
    if (best === undefined) break;
    chosen.push(best);
    stock[best.sheet] = (stock[best.sheet] ?? 0) - best.times;
    wanted = wanted.map((left, kind) =>
      Math.max(0, left - best.times * (best.filling.counts[kind] ?? 0)),
    );
  }
  return writePlan(order, all, chosen);
}

/** The sheet to take next, with as many alike as can be filled with pieces that are wanted. */
function chooseSheet(
  { kinds, sheets }: CoverOrder,
  left: {
    readonly options: readonly (readonly Option[])[];
    readonly stock: readonly number[];
    readonly wanted: readonly number[];
  },
): Choice | undefined {
  let best: Choice | undefined;
  let most = 0;
  for (const [sheet, offer] of sheets.entries()) {
    if ((left.stock[sheet] ?? 0) < 1) continue;
    for (const { filling, given } of left.options[sheet] ?? []) {
      let area = 0;
      let alike = left.stock[sheet] ?? 0;
      for (const [kind, count] of given) {
        const own = left.wanted[kind] ?? 0;
        if (own === 0) continue;
        area += Math.min(count, own) * (kinds[kind]?.across ?? 0) * (kinds[kind]?.along ?? 0);
        alike = Math.min(alike, Math.max(1, Math.floor(own / count)));
      }
      const worth = area / Math.max(offer.cost / offer.count, 1e-9);
      if (worth <= most) continue;
      most = worth;
      best = { sheet, filling, times: alike };
    }
  }
  return best;
}

/** One sheet of each kind alone, cut the way that gives most. */
function listAlone(
  kinds: readonly PieceKind[],
  sheet: { readonly width: number; readonly length: number },
  levels: readonly Level[],
): readonly Filling[] {
  return kinds.flatMap(({ count: wanted }, kind) => {
    const ways = levels.map(({ height, widths }, level) => {
      const width = widths[kind] ?? Number.POSITIVE_INFINITY;
      const held = Math.min(wanted, Math.floor((sheet.width + ROOM_SLACK) / width));
      const strips = Math.floor((sheet.length + ROOM_SLACK) / height);
      return { level, held, times: Math.min(strips, Math.ceil(wanted / Math.max(1, held))) };
    });
    const [first, ...others] = ways;
    if (first === undefined) return [];
    const best = others.reduce((one, way) => (gives(way) > gives(one) ? way : one), first);
    if (gives(best) === 0) return [];
    const only = (count: number) => kinds.map((_, at) => (at === kind ? count : 0));
    const pattern = { level: best.level, counts: only(best.held) };
    const counts = only(Math.min(wanted, gives(best)));
    return [{ counts, strips: [{ pattern, times: best.times }] }];
  });
}

function gives({ held, times }: { readonly held: number; readonly times: number }): number {
  return held * times;
}

function writePlan(
  order: CoverOrder,
  all: readonly SheetFillings[],
  chosen: readonly Choice[],
): PurchasePlan {
  const sheets = order.sheets.map((offer) => ({ offer, fillings: [] }));
  const cover = { demand: order.kinds.map(({ count }) => count), sheets };
  const programme = writeProgramme(cover, { fillings: chosen, patterns: [] });
  const taken = order.sheets.map((_, at) =>
    chosen.reduce((sum, { sheet, times }) => sum + (sheet === at ? times : 0), 0),
  );
  const packs = taken.map((count, at) => Math.ceil(count / (order.sheets[at]?.count ?? 1)));
  const times = Float64Array.from([...packs, ...chosen.map((one) => one.times)]);
  const found = { programme, times, cost: 0 };
  return layOut(order, all, { cover, found, at: -1 }, { steps: 0 });
}
