import type { KitLimit, Role } from '../contract.ts';

/** What kits are made from and what each must hold. */
export interface KitStock {
  /** Squares of each print of the top, and the most of it that one kit may hold. */
  readonly prints: readonly { readonly squares: number; readonly most: number }[];
  /** Squares of each other role and how many of them a kit holds. */
  readonly others: readonly {
    readonly role: Role;
    readonly squares: number;
    readonly perKit: number;
  }[];
  /** Squares of the top in a kit. */
  readonly perKit: number;
  /** Fewest prints in a kit. */
  readonly distinct: number;
}

/** How far the prints go towards a number of kits. */
export interface PrintReach {
  /** Σ min(sⱼ, bⱼ·T): squares that can go into T kits. */
  readonly squares: number;
  /** Σ min(sⱼ, T): kits in which some print can be found, summed over the prints. */
  readonly prints: number;
}

/**
 * What the prints give to T kits when no kit holds more than b of one.
 *
 * @example
 * reachPrints([{ squares: 9, most: 2 }, { squares: 3, most: 2 }], 4) // => { squares: 11, prints: 7 }
 */
export function reachPrints(prints: KitStock['prints'], kits: number): PrintReach {
  let [squares, found] = [0, 0];
  for (const print of prints) {
    squares += Math.min(print.squares, print.most * kits);
    found += Math.min(print.squares, print.most > 0 ? kits : 0);
  }
  return { squares, prints: found };
}

/**
 * What keeps T kits from being made; nothing where they can be.
 *
 * T kits of k squares, at most bⱼ of print j and at least d prints in each, can be made exactly when
 * d ≤ k, Σ min(sⱼ, bⱼ·T) ≥ k·T and Σ min(sⱼ, T) ≥ d·T. Needed: T kits hold no more than bⱼ·T of a
 * print and show it in no more than T kits. Enough: totals that meet both sums can be chosen together,
 * the second within the first; then dealing them out to the kits in turn, the scarce prints first,
 * gives every kit k squares, ⌈yⱼ/T⌉ ≤ bⱼ of a print, and of the prints scarcer than T their even
 * share, so d prints or more (`fillKits` does so).
 */
export function limitKits(stock: KitStock, kits: number): readonly KitLimit[] {
  const { prints, others, perKit, distinct } = stock;
  const reach = reachPrints(prints, kits);
  const all = prints.reduce((sum, print) => sum + print.squares, 0);
  const limits: KitLimit[] = [];
  if (all < perKit * kits) limits.push('top');
  else if (reach.squares < perKit * kits) limits.push('mostOfOne');
  if (distinct > perKit || reach.prints < distinct * kits) limits.push('distinctPrints');
  const short = others.filter((other) => other.squares < other.perKit * kits);
  return [...limits, ...short.map(({ role }) => role)];
}

/**
 * The most kits that can be made, by bisection: what can be made of T kits can be made of fewer, since
 * both sums of `limitKits` divided by T only shrink as T grows.
 *
 * @returns a whole number, 0 or more
 *
 * @example
 * countKits({ prints: [{ squares: 9, most: 2 }, { squares: 3, most: 2 }], others: [], perKit: 3, distinct: 2 }) // => 3
 */
export function countKits(stock: KitStock): number {
  const all = stock.prints.reduce((sum, print) => sum + print.squares, 0);
  let most = 0;
  let beyond = Math.floor(all / stock.perKit) + 1;
  while (beyond - most > 1) {
    const middle = Math.floor((most + beyond) / 2);
    if (limitKits(stock, middle).length === 0) most = middle;
    else beyond = middle;
  }
  return most;
}
