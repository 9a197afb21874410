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
  const items = orderItems(room, choice);
  const counts = choice.widths.map(() => 0);
  const { budget } = search;
  let best: { counts: readonly number[]; worth: number } = { counts: [], worth: search.least };
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

function orderItems(room: number, { widths, worth, most }: StripChoice): readonly Item[] {
  const items: Item[] = [];
  for (const [kind, width] of widths.entries()) {
    const item = { kind, width, worth: worth[kind] ?? 0, most: most[kind] ?? 0 };
    if (item.worth > 1e-12 && item.most > 0 && width <= room + ROOM_SLACK) items.push(item);
  }
  return items.sort((one, other) => other.worth / other.width - one.worth / one.width);
}
