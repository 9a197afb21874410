import { cutLeast } from '../strips/cut-least.ts';
import type { PieceKind } from '../strips/list-levels.ts';
import type { Budget, StripList } from '../strips/strip-plan.ts';
import { type CutStrip, heightOf, trimPlan } from '../strips/trim-plan.ts';
import type { Cover } from './cover-programme.ts';
import type { Filling } from './keep-largest.ts';
import type { SheetFillings } from './list-fillings.ts';
import type { CoverOrder } from './offer.ts';
import type { CoverFound } from './search-cover.ts';

/** What to buy of each offer, and how to cut it. */
export interface PurchasePlan {
  readonly roll?: {
    /** Which of the rolls. */
    readonly at: number;
    readonly steps: number;
    readonly strips: readonly CutStrip[];
  };
  readonly packs: readonly number[];
  /** Sheets cut alike: of which offer, how many, and the strips of one. */
  readonly sheets: readonly SheetCut[];
  /** Pieces of each kind that are placed. */
  readonly placed: readonly number[];
}

export interface SheetCut {
  readonly at: number;
  readonly times: number;
  readonly strips: readonly CutStrip[];
}

/**
 * What the numbers of a programme mean at the cutting table: exactly the pieces wanted, on sheets
 * first, the rest on the shortest length of roll that is found for them.
 *
 * @param solution a cover, the whole numbers found for it, and which roll it is off (−1 for none)
 * @param allowance steps left for this and whatever comes after it; written over
 */
export function layOut(
  order: CoverOrder,
  fillings: readonly SheetFillings[],
  solution: { readonly cover: Cover; readonly found: CoverFound; readonly at: number },
  allowance: Budget,
): PurchasePlan {
  const { cover, found, at } = solution;
  const { programme, times } = found;
  const first = cover.roll === undefined ? 0 : 1;
  const start = first + order.sheets.length;
  let wanted = order.kinds;
  const sheets: SheetCut[] = [];
  for (const [own, { sheet, filling }] of programme.fillings.entries()) {
    const levels = fillings[sheet]?.levels ?? [];
    for (let left = times[start + own] ?? 0; left > 0; ) {
      const one = { ...filling, counts: countPlaced(filling, wanted) };
      const alike = Math.min(left, countAlike(one, wanted));
      if (alike === 0) break;
      const pieces = wanted.map((kind, place) => ({ ...kind, count: one.counts[place] ?? 0 }));
      sheets.push({ at: sheet, times: alike, strips: trimPlan(pieces, levels, one.strips) });
      wanted = wanted.map((kind, place) => ({
        ...kind,
        count: kind.count - alike * (one.counts[place] ?? 0),
      }));
      left -= alike;
    }
  }
  const packs = order.sheets.map((_, own) => times[first + own] ?? 0);
  const roll = cover.roll && {
    at,
    steps: times[0] ?? 0,
    strips: rollStrips(solution, wanted, allowance),
  };
  const onRoll = countOn(order.kinds, roll?.strips ?? []);
  const placed = order.kinds.map(
    (kind, place) => kind.count - (wanted[place]?.count ?? 0) + (onRoll[place] ?? 0),
  );
  return { ...(roll && { roll }), packs, sheets, placed };
}

function countPlaced({ counts }: Filling, wanted: readonly PieceKind[]): readonly number[] {
  return counts.map((count, place) => Math.min(count, wanted[place]?.count ?? 0));
}

/** How many sheets can be cut alike; none where no piece of it is wanted. */
function countAlike({ counts }: Filling, wanted: readonly PieceKind[]): number {
  const times = counts.flatMap((count, place) =>
    count > 0 ? [Math.floor((wanted[place]?.count ?? 0) / count)] : [],
  );
  return times.length === 0 ? 0 : Math.min(...times);
}

/** The shorter of the strips that the programme chose and the least for the pieces left. */
function rollStrips(
  { cover, found }: { readonly cover: Cover; readonly found: CoverFound },
  wanted: readonly PieceKind[],
  allowance: Budget,
): readonly CutStrip[] {
  const { roll, leftOut } = cover;
  const { programme, times } = found;
  if (roll === undefined) return [];
  const last = programme.columns.length - (leftOut?.length ?? 0);
  const start = last - programme.patterns.length;
  const chosen: StripList = programme.patterns.flatMap((pattern, own) => {
    const often = times[start + own] ?? 0;
    return often > 0 ? [{ pattern, times: often }] : [];
  });
  const strips = trimPlan(wanted, roll.problem.levels, chosen);
  const held = countOn(wanted, strips);
  if (wanted.some((kind, place) => kind.count > (held[place] ?? 0))) return strips;
  const least = cutLeast(wanted, roll.problem.usable, allowance);
  return least.length < heightOf(strips) - 1e-6 ? least.strips : strips;
}

function countOn(kinds: readonly PieceKind[], strips: readonly CutStrip[]): readonly number[] {
  const counts = kinds.map(() => 0);
  for (const { times, pieces } of strips) {
    for (const { kind, count } of pieces) counts[kind] = (counts[kind] ?? 0) + times * count;
  }
  return counts;
}
