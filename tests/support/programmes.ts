import fc from 'fast-check';
import type { ProgrammeColumn } from '#core/cloth/strips/start-programme.ts';

/** A small programme: what to take at least of each need, and what each variable gives and costs. */
export interface SmallProgramme {
  readonly columns: readonly ProgrammeColumn[];
  readonly needs: readonly number[];
}

const NEEDS = 3;

/** Whole costs and gifts; the last variable gives of everything, so that there is always a solution. */
export const programmes: fc.Arbitrary<SmallProgramme> = fc.record({
  columns: fc
    .array(
      fc.record({
        cost: fc.integer({ min: 0, max: 20 }),
        gives: fc.array(fc.integer({ min: -2, max: 6 }), { minLength: NEEDS, maxLength: NEEDS }),
      }),
      { minLength: 2, maxLength: 4 },
    )
    .map((columns) => [...columns, { cost: 15, gives: [3, 3, 3] }]),
  needs: fc.array(fc.integer({ min: 0, max: 12 }), { minLength: NEEDS, maxLength: NEEDS }),
});

/** The least cost over whole numbers by trying all up to `most` of each. */
export function leastByTrying({ columns, needs }: SmallProgramme, most: number): number {
  let least = Number.POSITIVE_INFINITY;
  const visit = (at: number, cost: number, given: readonly number[]): void => {
    if (cost >= least) return;
    const column = columns[at];
    if (column === undefined) {
      if (given.every((sum, row) => sum >= (needs[row] ?? 0))) least = cost;
      return;
    }
    for (let times = 0; times <= most; times += 1) {
      visit(
        at + 1,
        cost + times * column.cost,
        given.map((sum, row) => sum + times * (column.gives[row] ?? 0)),
      );
    }
  };
  visit(
    0,
    0,
    needs.map(() => 0),
  );
  return least;
}
