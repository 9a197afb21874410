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
 * (Dantzig's bound).
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
  const listed = listItems(room, choice);
  if (budget.steps > 1 && cannotExceed(listed, room, least)) {
    budget.steps -= 1;
    return { counts: [], worth: least, ceiling: least };
  }
  const items = listed.sort((one, other) => other.rate - one.rate);
  const counts = choice.widths.map(() => 0);
  let best: { counts: readonly number[]; worth: number } = { counts: [], worth: least };
  const visit = (at: number, left: number, worth: number): void => {
    budget.steps -= 1;
    if (worth > best.worth) best = { counts: [...counts], worth };
    const item = items[at];
    if (item === undefined || budget.steps <= 0) return;
    if (worth + (left * item.worth) / item.width <= best.worth + 1e-12) return;
    const fitting = Math.min(item.most, Math.floor((left + ROOM_SLACK) / item.width));
    for (let count = fitting; count >= 0; count -= 1) {
      counts[item.kind] = count;
      visit(at + 1, left - count * item.width, worth + count * item.worth);
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
function cannotExceed(items: readonly Item[], room: number, least: number): boolean {
  const [first] = items;
  if (first === undefined) return true;
  let best = first;
  for (const item of items) if (item.rate > best.rate) best = item;
  return (room * best.worth) / best.width <= least + 1e-12;
}
