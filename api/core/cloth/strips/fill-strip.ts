import { ROOM_SLACK } from './list-levels.ts';
import type { Budget } from './strip-plan.ts';

/** What may lie in one strip. */
export interface StripChoice {
  /** Width of one piece of each kind, mm; infinite where it does not fit. */
  readonly widths: readonly number[];
  /** Worth of one piece of each kind; kinds of no worth are left out. */
  readonly worth: readonly number[];
  /** Greatest number of each kind. */
  readonly most: readonly number[];
}

/** The best filling found, and what none can exceed. */
export interface StripFilling {
  readonly counts: readonly number[];
  readonly worth: number;
  /** Equal to `worth` where the search ended, else the worth of a filling in fractions. */
  readonly ceiling: number;
}

/** So many kinds are looked at for a step. */
const LOOKED = 16;

interface Item {
  readonly kind: number;
  readonly width: number;
  readonly worth: number;
  readonly most: number;
  /** Worth for width. */
  readonly rate: number;
}

/**
 * The most worth that one strip can hold: a bounded knapsack, searched depth first over kinds in
 * order of worth for width, cut off where the rest filled with the next kind could not win
 * (Dantzig's bound). Where the steps run out, the first filling is still made: the best kinds first.
 *
 * @param room usable width, mm
 * @param least only fillings of more worth than this are looked for
 * @returns no counts and `least` as worth where there is no such filling
 */
export function fillStrip(
  room: number,
  choice: StripChoice,
  search: { readonly budget: Budget; readonly least: number },
): StripFilling {
  const { budget, least } = search;
  budget.steps -= 1 + choice.widths.length / LOOKED;
  if (cannotExceed(room, choice, least)) return { counts: [], worth: least, ceiling: least };
  const items = listItems(room, choice).sort((one, other) => other.rate - one.rate);
  budget.steps -= items.length / 2;
  const counts = choice.widths.map(() => 0);
  let best: { counts: readonly number[]; worth: number } = { counts: [], worth: least };
  let isFirst = true;
  const visit = (at: number, left: number, worth: number): void => {
    budget.steps -= 1;
    const item = items[at];
    if (item === undefined) {
      isFirst = false;
      if (worth > best.worth) best = { counts: [...counts], worth };
      return;
    }
    if (worth + (left * item.worth) / item.width <= best.worth + 1e-12) {
      isFirst = false;
      return;
    }
    const fitting = Math.min(item.most, Math.floor((left + ROOM_SLACK) / item.width));
    for (let count = fitting; count >= 0; count -= 1) {
      counts[item.kind] = count;
      visit(at + 1, left - count * item.width, worth + count * item.worth);
      if (budget.steps <= 0 && !isFirst) return;
    }
    counts[item.kind] = 0;
  };
  visit(0, room, 0);
  if (budget.steps > 0) return { ...best, ceiling: best.worth };
  const [first] = items;
  const fractional = first === undefined ? 0 : ((room + ROOM_SLACK) * first.worth) / first.width;
  return { ...best, ceiling: Math.max(best.worth, fractional) };
}

function listItems(room: number, { widths, worth, most }: StripChoice): Item[] {
  const items: Item[] = [];
  for (let kind = 0; kind < widths.length; kind += 1) {
    const width = widths[kind] ?? Number.POSITIVE_INFINITY;
    const own = worth[kind] ?? 0;
    const wanted = most[kind] ?? 0;
    if (own > 1e-12 && wanted > 0 && width <= room + ROOM_SLACK) {
      items.push({ kind, width, worth: own, most: wanted, rate: own / width });
    }
  }
  return items;
}

/** Whether even the room filled with nothing but the best is of no use, so that nothing need be ordered. */
function cannotExceed(room: number, { widths, worth, most }: StripChoice, least: number): boolean {
  let best = 0;
  for (let kind = 0; kind < widths.length; kind += 1) {
    const width = widths[kind] ?? Number.POSITIVE_INFINITY;
    const own = worth[kind] ?? 0;
    if (own <= 1e-12 || (most[kind] ?? 0) <= 0 || width > room + ROOM_SLACK) continue;
    if (own > best * width) best = own / width;
  }
  return room * best <= least + 1e-12;
}
