import type { PlanInput, PlanRequest } from '../contract.ts';
import { fail, type Outcome, succeed } from '../outcome.ts';
import { SOURCES } from '../sources.ts';
import { SPARE, WASHES } from '../tables/defaults.ts';
import { checkBlock } from './check-block.ts';
import { checkGrid } from './check-grid.ts';
import { checkOffers } from './check-offers.ts';
import {
  keep,
  type Reading,
  type Resolved,
  readPlain,
  startReading,
  writeQuery,
} from './reading.ts';
import { resolveBlock, resolveCuts } from './resolve-block.ts';
import { resolveLayers } from './resolve-layers.ts';
import { resolvePace, resolveStitch, resolveTolerance } from './resolve-sewing.ts';
import { resolveSwatches } from './resolve-swatches.ts';
import { resolveTarget } from './resolve-target.ts';

/**
 * Understands a wish for a plan: reads every length, fills every default, checks what the parts
 * mean to each other. Shape and ranges of plain numbers were checked before.
 *
 * @returns the request with its defaults in the caller's unit, what was assumed, and the canonical
 * query; or all faults at once. What comes out as `input` may be given back and stays the same.
 */
export function resolvePlan(request: PlanRequest): Outcome<Resolved<PlanInput>> {
  const reading = startReading(request.unit);
  const target = resolveTarget(reading, request.target);
  const block = resolveBlock(reading, request);
  const { cuts, places } = resolveCuts(reading, request.cuts);
  const layers = resolveLayers(reading, request.layers);
  const swatches = resolveSwatches(reading, request.swatches);
  const input: PlanInput = {
    unit: reading.unit,
    target,
    block,
    cuts,
    layers,
    swatches,
    ...resolveManner(reading, request),
    stitch: resolveStitch(reading, request.stitch),
    pace: resolvePace(reading, request.pace),
    tolerance: resolveTolerance(reading, request.tolerance),
    infant: readPlain(reading, {
      path: ['infant'],
      given: request.infant,
      fallback: false,
    }),
    ...resolvePupils(reading, request.pupils),
    explain: readPlain(reading, {
      path: ['explain'],
      given: request.explain,
      fallback: false,
    }),
  };
  checkBlock(reading, input, places);
  checkOffers(reading, input, places);
  checkGrid(reading, input);
  if (reading.faults.length > 0) return fail(reading.faults);
  return succeed({
    input,
    assumptions: reading.assumptions,
    query: writeQuery(reading.kept),
  });
}

/** How many make the quilt; nothing is assumed where nobody said so. */
function resolvePupils(reading: Reading, pupils: number | undefined): Pick<PlanInput, 'pupils'> {
  if (pupils === undefined) return {};
  keep(reading, ['pupils'], pupils);
  return { pupils };
}

function resolveManner(
  reading: Reading,
  request: PlanRequest,
): Pick<PlanInput, 'grain' | 'washes' | 'spare'> {
  return {
    grain: readPlain<'alternating' | 'aligned'>(reading, {
      path: ['grain'],
      given: request.grain,
      fallback: 'alternating',
      why: 'Every other block is turned a quarter, so that the quilt shrinks alike both ways',
      source: SOURCES.model,
    }),
    washes: readPlain(reading, {
      path: ['washes'],
      given: request.washes,
      fallback: WASHES,
      why: 'Washed sizes are those after the first wash and dry',
    }),
    spare: readPlain(reading, {
      path: ['spare'],
      given: request.spare,
      fallback: SPARE,
      why: 'Percent of pieces cut beyond need, rounded up for each print',
    }),
  };
}
