import type { Pace, PlanInput, PlanRequest } from '../contract.ts';
import { roundTo } from '../length.ts';
import { BORDER_PASSES, DEFAULTS } from '../tables/defaults.ts';
import { PACES } from '../tables/paces.ts';
import { keep, type Reading, readLengthField, readPlain } from './reading.ts';

/** Reads how the quilt is stitched. */
export function resolveStitch(
  reading: Reading,
  stitch: PlanRequest['stitch'],
): PlanInput['stitch'] {
  const given = stitch ?? {};
  const defaults = DEFAULTS[reading.unit];
  const length = (
    name: 'length' | 'tail' | 'link' | 'bobbin',
    row: { readonly limit: 'stitchLength' | 'tail' | 'link' | 'bobbin'; readonly why: string },
  ) =>
    readLengthField(reading, {
      path: ['stitch', name],
      given: given[name],
      limit: row.limit,
      fallback: defaults[row.limit],
      why: row.why,
    });
  const plain = {
    length: length('length', { limit: 'stitchLength', why: 'Length of one stitch' }),
    tail: length('tail', { limit: 'tail', why: 'Thread cut off where a run starts or ends' }),
    link: length('link', { limit: 'link', why: 'Thread between two chained blocks' }),
    chained: readPlain(reading, {
      path: ['stitch', 'chained'],
      given: given.chained,
      fallback: true,
      why: 'Blocks are fed one after the other without cutting the thread',
    }),
    borderPasses: readPlain(reading, {
      path: ['stitch', 'borderPasses'],
      given: given.borderPasses,
      fallback: BORDER_PASSES,
      why: 'Rounds of stitching on the perimeter',
    }),
    bobbin: length('bobbin', { limit: 'bobbin', why: 'Thread wound on one bobbin' }),
  };
  if (given.ratio === undefined) return plain;
  const ratio = roundTo(given.ratio, 9);
  keep(reading, ['stitch', 'ratio'], ratio);
  return { ...plain, ratio };
}

/** Reads how fast somebody works; minutes. */
export function resolvePace(reading: Reading, pace: Partial<Pace> | undefined): Pace {
  const read = (name: keyof Pace) =>
    readPlain(reading, {
      path: ['pace', name],
      given: pace?.[name],
      fallback: PACES[name].minutes,
      why: `Minutes for ${PACES[name].of}`,
    });
  return {
    cutPiece: read('cutPiece'),
    stackBlock: read('stackBlock'),
    sewMetre: read('sewMetre'),
    handleSeam: read('handleSeam'),
    snip: read('snip'),
    layBlock: read('layBlock'),
    trimBlock: read('trimBlock'),
  };
}

/** Reads how true somebody works. */
export function resolveTolerance(
  reading: Reading,
  tolerance: PlanRequest['tolerance'],
): PlanInput['tolerance'] {
  const defaults = DEFAULTS[reading.unit];
  const field = (
    name: 'seam' | 'cut' | 'ease',
    row: { readonly limit: 'trueness' | 'ease'; readonly fallback: number; readonly why: string },
  ) => readLengthField(reading, { path: ['tolerance', name], given: tolerance?.[name], ...row });
  return {
    seam: field('seam', {
      limit: 'trueness',
      fallback: defaults.seamDeviation,
      why: 'How far a seam strays, one standard deviation',
    }),
    cut: field('cut', {
      limit: 'trueness',
      fallback: defaults.cutDeviation,
      why: 'How far a cut strays, one standard deviation',
    }),
    ease: field('ease', {
      limit: 'ease',
      fallback: defaults.ease,
      why: 'A row end that is off by this much washes out',
    }),
  };
}
