import { searchWhole } from '../strips/search-whole.ts';
import { startProgramme } from '../strips/start-programme.ts';
import { type Cover, type CoverProgramme, listCoverSets } from './cover-programme.ts';

/** What was found: how often each column of a programme is taken. */
export interface CoverFound {
  readonly programme: CoverProgramme;
  readonly times: Float64Array;
  readonly cost: number;
}

/**
 * The cheapest purchase in whole numbers over the columns of one programme.
 *
 * @param asked greatest cost of use, by how much another must be cheaper, and a cost that none is below
 * @returns the cheapest found, if any is cheap enough, and whether everything was tried
 */
export function searchCover(
  cover: Cover,
  programme: CoverProgramme,
  asked: {
    readonly target: number;
    readonly apart: number;
    readonly bound: number;
    readonly budget: { steps: number };
  },
): { readonly found?: CoverFound; readonly isComplete: boolean } {
  const { columns, needs } = programme;
  const measure = (times: Float64Array) => {
    const isMet = needs.every((need, row) => {
      const given = columns.reduce(
        (sum, { gives }, name) => sum + (gives[row] ?? 0) * (times[name] ?? 0),
        0,
      );
      return given >= need - 1e-4;
    });
    return isMet
      ? columns.reduce((sum, { cost }, name) => sum + cost * (times[name] ?? 0), 0)
      : undefined;
  };
  const { times, isComplete } = searchWhole(startProgramme(columns, needs), {
    names: columns.length,
    sets: listCoverSets(cover, programme),
    target: asked.target,
    step: asked.apart,
    bound: asked.bound,
    budget: asked.budget,
    measure,
  });
  const cost = times && measure(times);
  if (times === undefined || cost === undefined) return { isComplete };
  return { found: { programme, times, cost }, isComplete };
}
