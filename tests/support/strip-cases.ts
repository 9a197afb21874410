import fc from 'fast-check';
import { listLevels, type PieceKind } from '#core/cloth/strips/list-levels.ts';
import type { StripProblem } from '#core/cloth/strips/strip-plan.ts';

/** Several sizes on one roll. */
export interface StripCase {
  readonly kinds: readonly PieceKind[];
  /** mm. */
  readonly usable: number;
}

/** Sides in whole units between two numbers of them, on a roll of so many; a unit in mm. */
export interface StripFamily {
  readonly unit: number;
  readonly least: number;
  readonly most: number;
  readonly room: number;
}

/** Pieces of 2 to 17 in on 41 in, and of 5 to 43 cm on 105 cm: as people cut them. */
export const FAMILIES = {
  eighths: { unit: 3.175, least: 16, most: 136, room: 328 },
  'half inches': { unit: 12.7, least: 4, most: 34, room: 82 },
  centimetres: { unit: 10, least: 5, most: 43, room: 105 },
} as const satisfies Record<string, StripFamily>;

/** So many sizes, up to 200 pieces shared among them at random, six in ten of which may be turned. */
export function stripCases(
  { unit, least, most, room }: StripFamily,
  sizes: { readonly min: number; readonly max: number },
): fc.Arbitrary<StripCase> {
  const side = fc.integer({ min: least, max: most }).map((units) => units * unit);
  const kind = fc.record({
    across: side,
    along: side,
    weight: fc.integer({ min: 5, max: 105 }),
    turn: fc.integer({ min: 1, max: 10 }),
  });
  const kinds = fc.array(kind, { minLength: sizes.min, maxLength: sizes.max });
  return fc.noBias(
    fc.tuple(kinds, fc.integer({ min: 1, max: 200 })).map(([drawn, pieces]) => {
      const sum = drawn.reduce((total, { weight }) => total + weight, 0);
      return {
        usable: room * unit,
        kinds: drawn.map(({ across, along, weight, turn }) => ({
          across,
          along,
          count: Math.max(1, Math.floor((pieces * weight) / sum)),
          canTurn: turn <= 6,
        })),
      };
    }),
  );
}

/** A case as the parts of the search see it. */
export function problemOf({ kinds, usable }: StripCase): StripProblem {
  return { usable, levels: listLevels(kinds, usable), demand: kinds.map(({ count }) => count) };
}

/** Three sizes on a roll of 100 by hand: 3 of 30 by 20, 2 of 40 by 25 that may be turned, 5 of 20 by 10. */
export const BY_HAND: StripCase = {
  usable: 100,
  kinds: [
    { across: 30, along: 20, count: 3, canTurn: false },
    { across: 40, along: 25, count: 2, canTurn: true },
    { across: 20, along: 10, count: 5, canTurn: false },
  ],
};
