import type { Pair, Swatch, WashInput, WashRequest } from '../contract.ts';
import { roundTo } from '../length.ts';
import { fail, type Outcome, succeed } from '../outcome.ts';
import { SOURCES } from '../sources.ts';
import { FABRICS } from '../tables/fabrics.ts';
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
import { resolveLayers } from './resolve-layers.ts';

/** Wash counts shown when none were asked for. */
const USUAL_WASHES: readonly number[] = [1, 3, 5, 10];

/** Names of swatches that mean something here: a fabric of the table, or a quilted test block. */
const KNOWN_NAMES: ReadonlySet<string> = new Set(['sandwich', ...FABRICS.map(({ name }) => name)]);

/**
 * Understands a wish for wash and shrinkage. Refuses a swatch that came out more than twice or less
 * than half as long as it went in (`after-unlikely`): that is a slip of the pen or of the unit.
 *
 * @returns as `resolvePlan` does
 */
export function resolveWash(request: WashRequest): Outcome<Resolved<WashInput>> {
  const reading = startReading(request.unit);
  const swatches = (request.swatches ?? []).map((swatch, index) =>
    resolveSwatch(reading, swatch, index),
  );
  const layers = resolveLayers(reading, request.layers);
  const grain = readPlain<'alternating' | 'aligned'>(reading, {
    path: ['grain'],
    given: request.grain,
    fallback: 'alternating',
    why: 'Every other block is turned a quarter, so that the quilt shrinks alike both ways',
  });
  const sewn = resolvePair(reading, 'sewn', request.sewn);
  const wanted = resolvePair(reading, 'wanted', request.wanted);
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
    washes,
    confidence,
  };
  return succeed({ input, assumptions: reading.assumptions, query: writeQuery(reading.kept) });
}

function resolveSwatch(
  reading: Reading,
  swatch: Swatch,
  index: number,
): WashInput['swatches'][number] {
  const at = (name: string) => ['swatches', index, name];
  const fabric = readPlain(reading, {
    path: at('fabric'),
    given: swatch.fabric === undefined ? undefined : readName(swatch.fabric),
    fallback: 'cloth',
    why: 'A swatch without the name of a fabric tells of itself, not of a layer of the quilt',
  });
  keep(reading, at('direction'), swatch.direction);
  const side = (name: 'before' | 'after') =>
    readLengthField(reading, { path: at(name), given: swatch[name], limit: 'benchmark' });
  const before = side('before');
  const after = side('after');
  if (isSound(reading, at('before'), at('after')) && (after > 2 * before || after < before / 2)) {
    reading.faults.push({
      code: 'after-unlikely',
      path: at('after'),
      expected: `${roundTo(before / 2, 4)} to ${roundTo(2 * before, 4)} ${reading.unit}`,
      received: `${after} ${reading.unit}`,
    });
  }
  const washes = readPlain(reading, {
    path: at('washes'),
    given: swatch.washes,
    fallback: 1,
    why: 'The swatch was measured after one wash',
  });
  return { fabric, direction: swatch.direction, before, after, washes };
}

/** The name as given, or the name of the table that it spells in its own way. */
function readName(name: string): string {
  const known = name.trim().toLowerCase().replace(/\s+/g, '-');
  return KNOWN_NAMES.has(known) ? known : name;
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
