import { dealEvenly } from '../layout/deal-evenly.ts';
import type { KitStock } from './most-kits.ts';

/** Kits alike. */
export interface KitGroup {
  readonly count: number;
  /** Squares of each print in one of them, in the order of the stock. */
  readonly squares: readonly number[];
}

/**
 * Makes up kits: first how much of each print goes into all of them together, then dealt out in turn.
 *
 * The totals fill up level by level: one square of every print in every kit, then a second, and so on
 * as far as it goes, the fullest prints first where not all are needed. So kits are as varied and as
 * much alike as the stock allows. Scarce prints are dealt first (see `limitKits` for why this always
 * comes out).
 *
 * @param kits no more than `countKits` finds
 * @returns the largest group first; every kit holds `perKit` squares, no more than `most` of a print,
 * and `distinct` prints or more
 *
 * @example
 * fillKits({ prints: [{ squares: 9, most: 2 }, { squares: 3, most: 2 }], others: [], perKit: 3, distinct: 2 }, 3) // => [{ count: 3, squares: [2, 1] }]
 */
export function fillKits(stock: KitStock, kits: number): readonly KitGroup[] {
  if (kits === 0) return [];
  const totals = shareTotals(stock, kits);
  const scarceFirst = totals
    .map((total, print) => ({ total, print }))
    .toSorted((one, other) => Number(one.total >= kits) - Number(other.total >= kits));
  const deals = dealEvenly(
    scarceFirst.map(({ total }) => total),
    kits,
  );
  const groups = new Map<string, KitGroup>();
  for (const { hands, each } of deals) {
    const squares = totals.map((_, print) => {
      return each[scarceFirst.findIndex((entry) => entry.print === print)] ?? 0;
    });
    const known = groups.get(squares.join());
    groups.set(squares.join(), { count: hands + (known?.count ?? 0), squares });
  }
  return [...groups.values()].toSorted((one, other) => other.count - one.count);
}

/** Squares of each print for all kits together, summing to what they hold. */
function shareTotals({ prints, perKit }: KitStock, kits: number): readonly number[] {
  const totals = prints.map(() => 0);
  const fullest = prints
    .map((print, at) => ({ ...print, at }))
    .toSorted((one, other) => other.squares - one.squares || one.at - other.at);
  let lack = perKit * kits;
  for (let level = 1; lack > 0 && level <= perKit; level += 1) {
    for (const { squares, most, at } of fullest) {
      const goal = Math.min(squares, Math.min(most, level) * kits);
      const more = Math.min(lack, Math.max(0, goal - (totals[at] ?? 0)));
      totals[at] = (totals[at] ?? 0) + more;
      lack -= more;
    }
  }
  return totals;
}
