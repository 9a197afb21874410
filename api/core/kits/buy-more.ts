import type { Role } from '../contract.ts';
import { type KitStock, reachPrints } from './most-kits.ts';

/** Squares to buy. */
export interface Lack {
  readonly role: Role;
  /** Place of the print in the stock; absent for a print that is not yet there and for other roles. */
  readonly print?: number;
  readonly squares: number;
}

/** A print that may be bought. */
interface Shelf {
  /** Absent for one that is not yet there. */
  readonly print?: number;
  readonly own: number;
  readonly most: number;
  bought: number;
}

/**
 * The fewest squares to buy for a number of kits, and of which prints.
 *
 * The top lacks k·T − Σ min(sⱼ, bⱼ·T) squares and d·T − Σ min(sⱼ, T) showings of a print. A square of
 * a print of which there are fewer than T serves both, so these come first, those nearest to T before
 * others, then prints that are not yet there; what squares are lacking then go wherever there is room
 * below bⱼ·T. No purchase of fewer will do, since a square adds at most one to each sum.
 *
 * @param most of one print in a kit, for a print that is not yet there
 * @returns nothing where the stock is enough, or where kits of that kind cannot be
 *
 * @example
 * buyMore({ prints: [{ squares: 9, most: 2 }, { squares: 3, most: 2 }], others: [], perKit: 3, distinct: 2 }, { kits: 4, most: 2 }) // => [{ role: 'top', print: 1, squares: 1 }]
 */
export function buyMore(
  stock: KitStock,
  { kits, most }: { readonly kits: number; readonly most: number },
): readonly Lack[] {
  if (stock.distinct > stock.perKit) return [];
  const others = stock.others.flatMap(({ role, squares, perKit }) =>
    squares < perKit * kits ? [{ role, squares: perKit * kits - squares }] : [],
  );
  return [...buyPrints(stock, kits, most), ...others];
}

function buyPrints(stock: KitStock, kits: number, most: number): readonly Lack[] {
  const reach = reachPrints(stock.prints, kits);
  const shelves: Shelf[] = stock.prints
    .map((print, at) => ({ print: at, own: print.squares, most: print.most, bought: 0 }))
    .filter((shelf) => shelf.most > 0)
    .toSorted((one, other) => other.own - one.own || one.print - other.print);
  const showings = Math.max(0, stock.distinct * kits - reach.prints);
  fillShelves(shelves, showings, { kits, most, level: () => kits });
  const squares = Math.max(0, stock.perKit * kits - reach.squares - showings);
  fillShelves(shelves, squares, { kits, most, level: (shelf) => shelf.most * kits });
  return shelves
    .filter(({ bought }) => bought > 0)
    .map(({ print, bought }) => ({
      role: 'top',
      ...(print !== undefined && { print }),
      squares: bought,
    }));
}

/** Buys up to a level of each print, one after the other, and new prints where there is no room left. */
function fillShelves(
  shelves: Shelf[],
  wanted: number,
  rule: { readonly kits: number; readonly most: number; readonly level: (shelf: Shelf) => number },
): void {
  let lack = wanted;
  for (let at = 0; lack > 0; at += 1) {
    const shelf = shelves[at] ?? { own: 0, most: rule.most, bought: 0 };
    if (at === shelves.length) shelves.push(shelf);
    const room = rule.level(shelf) - shelf.own - shelf.bought;
    const amount = Math.max(0, Math.min(lack, room));
    shelf.bought += amount;
    lack -= amount;
  }
}
