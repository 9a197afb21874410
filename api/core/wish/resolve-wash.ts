import type { Pair, WashInput, WashRequest } from '../contract.ts';
import { fail, type Outcome, succeed } from '../outcome.ts';
import { SOURCES } from '../sources.ts';
import { DEFAULTS } from '../tables/defaults.ts';
import { reportFace } from './check-block.ts';
import {
  isSound,
  keep,
  type Reading,
  type Resolved,
  readLengthField,
  readPlain,
  startReading,
  writeQuery,
} from './reading.ts';
import { resolveCuts } from './resolve-block.ts';
import { resolveLayers } from './resolve-layers.ts';
import { resolveSwatches } from './resolve-swatches.ts';

/** Wash counts shown when none were asked for. */
const USUAL_WASHES: readonly number[] = [1, 3, 5, 10];

/**
 * Understands a wish for wash and shrinkage. Wash counts keep their order, each once: what to sew for
 * a wanted size goes by the first.
 *
 * @returns as `resolvePlan` does
 */
export function resolveWash(request: WashRequest): Outcome<Resolved<WashInput>> {
  const reading = startReading(request.unit);
  const swatches = resolveSwatches(reading, request.swatches);
  const layers = resolveLayers(reading, request.layers);
  const grain = readPlain<'alternating' | 'aligned'>(reading, {
    path: ['grain'],
    given: request.grain,
    fallback: 'alternating',
    why: 'Every other block is turned a quarter, so that the quilt shrinks alike both ways',
  });
  const sewn = resolvePair(reading, 'sewn', request.sewn);
  const wanted = resolvePair(reading, 'wanted', request.wanted);
  const block = resolveWashBlock(reading, request.block);
  const { cuts } = resolveCuts(reading, request.cuts);
  const fit =
    request.fit === undefined
      ? {}
      : { fit: readLengthField(reading, { path: ['fit'], given: request.fit, limit: 'ease' }) };
  const washes = resolveWashes(reading, request.washes);
  const confidence = readPlain<90 | 95 | 99>(reading, {
    path: ['confidence'],
    given: request.confidence,
    fallback: 95,
    why: 'Percent of cases that the intervals should hold',
  });
  if (reading.faults.length > 0) return fail(reading.faults);
  const input: WashInput = {
    unit: reading.unit,
    swatches,
    layers,
    grain,
    ...(sewn && { sewn }),
    ...(wanted && { wanted }),
    block,
    cuts,
    ...fit,
    washes,
    confidence,
  };
  return succeed({ input, assumptions: reading.assumptions, query: writeQuery(reading.kept) });
}

function resolvePair(
  reading: Reading,
  name: 'sewn' | 'wanted',
  given: WashRequest['sewn'],
): Pair | undefined {
  if (given === undefined) return undefined;
  const side = (side: 'width' | 'height') =>
    readLengthField(reading, { path: [name, side], given: given[side], limit: 'quiltSide' });
  return { width: side('width'), height: side('height') };
}

function resolveWashBlock(reading: Reading, block: WashRequest['block']): WashInput['block'] {
  const cut =
    block?.cut === undefined
      ? {}
      : {
          cut: readLengthField(reading, { path: ['block', 'cut'], given: block.cut, limit: 'cut' }),
        };
  const seam = readLengthField(reading, {
    path: ['block', 'seam'],
    given: block?.seam,
    limit: 'seam',
    fallback: DEFAULTS[reading.unit].seam,
  });
  if (cut.cut !== undefined && isSound(reading, ['block']) && cut.cut <= 2 * seam) {
    reportFace(reading, { cut: cut.cut, seam, path: ['block', 'seam'] });
  }
  return { ...cut, seam };
}

function resolveWashes(reading: Reading, given: readonly number[] | undefined): readonly number[] {
  const distinct = [...new Set(given ?? USUAL_WASHES)];
  if (distinct.join() === USUAL_WASHES.join()) {
    const why = 'Wash counts to tell of; what to sew for a wanted size goes by the first';
    const value = USUAL_WASHES.join(', ');
    reading.assumptions.push({ path: 'washes', value, why, source: SOURCES.practice });
    return distinct;
  }
  for (const [index, washes] of distinct.entries()) keep(reading, ['washes', index], washes);
  return distinct;
}
