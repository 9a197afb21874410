import type { Dictionary } from './dictionary.ts';

/** Variables whose sum any whole plan makes whole: 1 for each name that belongs, and nothing for others. */
export type Membership = Uint8Array;

/** A sum that is not whole yet. */
export interface Split {
  readonly members: Membership;
  /** The whole number below it. */
  readonly value: number;
  readonly sum: number;
}

/** The sum farthest from any whole number, where one is not whole. */
export function chooseSplit(
  { basic, amounts }: Dictionary,
  sets: readonly Membership[],
): Split | undefined {
  let best: Split | undefined;
  let farthest = 1e-6;
  for (const members of sets) {
    let sum = 0;
    for (let row = 0; row < basic.length; row += 1) {
      if (members[basic[row] ?? -1] === 1) sum += amounts[row] ?? 0;
    }
    const value = Math.floor(sum + 1e-6);
    const distance = Math.min(sum - value, value + 1 - sum);
    if (distance <= farthest) continue;
    farthest = distance;
    best = { members, value, sum };
  }
  return best;
}
