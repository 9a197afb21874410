import type { Length, PlanInput, PlanRequest } from '../contract.ts';
import { fail, type Outcome, succeed } from '../outcome.ts';
import { SOURCES } from '../sources.ts';
import { DEFAULTS, SPARE, WASHES } from '../tables/defaults.ts';
import { checkBlock } from './check-block.ts';
import { checkGrid } from './check-grid.ts';
import {
  keep,
  type Reading,
  type Resolved,
  readLengthField,
  readPlain,
  startReading,
  writeQuery,
} from './reading.ts';
import { resolveLayers } from './resolve-layers.ts';
import { resolvePace, resolveStitch, resolveTolerance } from './resolve-sewing.ts';
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
  const cuts = resolveCuts(reading, request.cuts);
  const layers = resolveLayers(reading, request.layers);
  const input: PlanInput = {
    unit: reading.unit,
    target,
    block,
    cuts,
    layers,
    ...resolveManner(reading, request),
    stitch: resolveStitch(reading, request.stitch),
    pace: resolvePace(reading, request.pace),
    tolerance: resolveTolerance(reading, request.tolerance),
    explain: readPlain(reading, {
      path: ['explain'],
      given: request.explain,
      fallback: false,
    }),
  };
  if (reading.faults.length === 0) checkBlock(reading, input, request.cuts !== undefined);
  if (reading.faults.length === 0) checkGrid(reading, input);
  if (reading.faults.length > 0) return fail(reading.faults);
  return succeed({
    input,
    assumptions: reading.assumptions,
    query: writeQuery(reading.kept),
  });
}

function resolveBlock(reading: Reading, request: PlanRequest): PlanInput['block'] {
  const defaults = DEFAULTS[reading.unit];
  const given = request.block ?? {};
  const field = (name: 'seam' | 'snipDepth' | 'snipPitch', why: string) =>
    readLengthField(reading, {
      path: ['block', name],
      given: given[name],
      limit: name,
      fallback: defaults[name],
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
  return {
    ...cut,
    seam: field('seam', 'A wide allowance makes full fringe and forgives snips'),
    snipDepth: field('snipDepth', 'Half the allowance stays between snip and stitching'),
    snipPitch: field('snipPitch', 'Close enough to bloom, far enough apart to be quick'),
  };
}

function resolveCuts(reading: Reading, cuts: readonly Length[] | undefined): readonly number[] {
  const usual = DEFAULTS[reading.unit].cuts;
  if (cuts === undefined) return usual;
  const own: Reading = { ...reading, kept: [] };
  const read = cuts.map((given, index) =>
    readLengthField(own, { path: ['cuts', index], given, limit: 'cut' }),
  );
  const distinct = [...new Set(read)].toSorted((one, other) => one - other);
  if (distinct.join() !== usual.join()) {
    for (const [index, cut] of distinct.entries()) keep(reading, ['cuts', index], cut);
  }
  return distinct;
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
