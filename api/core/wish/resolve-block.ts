import type { Length, PlanInput, PlanRequest } from '../contract.ts';
import { roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { DEFAULTS } from '../tables/defaults.ts';
import { keep, type Reading, readLengthField } from './reading.ts';

/** The cut sizes to consider. */
export interface CutWish {
  /** In the unit of the request, smallest first, each once. */
  readonly cuts: readonly number[];
  /** Where each stood in the request; absent where they are the usual ones. */
  readonly places?: readonly number[];
}

/** Reads the block; its cut size is left out where it is still to be chosen. */
export function resolveBlock(reading: Reading, request: PlanRequest): PlanInput['block'] {
  const defaults = DEFAULTS[reading.unit];
  const given = request.block ?? {};
  const field = (name: 'seam' | 'snipDepth' | 'snipPitch', fallback: number, why: string) =>
    readLengthField(reading, {
      path: ['block', name],
      given: given[name],
      limit: name,
      fallback,
      why,
    });
  // With the grid given there is nothing to choose a cut size by, so it has a default of its own.
  const needsCut = given.cut !== undefined || 'columns' in request.target;
  const cut = needsCut
    ? {
        cut: readLengthField(reading, {
          path: ['block', 'cut'],
          given: given.cut,
          limit: 'cut',
          ...('columns' in request.target && {
            fallback: defaults.cut,
            why: 'A handy block where only the grid is given',
          }),
        }),
      }
    : {};
  const seam = field(
    'seam',
    defaults.seam,
    'A wide allowance makes full fringe and forgives snips',
  );
  const half = roundTo(seam / 2, 9);
  return {
    ...cut,
    seam,
    snipDepth: field('snipDepth', half, 'Half the allowance stays between snip and stitching'),
    snipPitch: field(
      'snipPitch',
      defaults.snipPitch,
      'Close enough to bloom, far enough apart to be quick',
    ),
  };
}

/**
 * Reads the cut sizes to consider: sorted, each once. The usual ones spelt out count as not given,
 * since both have one canonical query.
 */
export function resolveCuts(reading: Reading, given: readonly Length[] | undefined): CutWish {
  const usual = DEFAULTS[reading.unit].cuts;
  const own: Reading = { ...reading, kept: [] };
  const read = (given ?? usual).map((cut, index) =>
    readLengthField(own, { path: ['cuts', index], given: cut, limit: 'cut' }),
  );
  const cuts = [...new Set(read)].toSorted((one, other) => one - other);
  if (cuts.join() === usual.join()) {
    const value = `${usual.at(0)} to ${usual.at(-1)} ${reading.unit}`;
    const why = 'Cut sizes to choose from, those that are handy to sew and snip';
    reading.assumptions.push({ path: 'cuts', value, why, source: SOURCES.practice });
    return { cuts };
  }
  for (const [index, cut] of cuts.entries()) keep(reading, ['cuts', index], cut);
  return { cuts, places: cuts.map((cut) => read.indexOf(cut)) };
}
