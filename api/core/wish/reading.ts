import type { Assumption, Length, Unit } from '../contract.ts';
import { fromMillimetres, roundTo, toMillimetres } from '../length.ts';
import { LENGTH_LIMITS, type LengthLimit } from '../limits.ts';
import type { Fault, Path } from '../outcome.ts';
import { readLength } from '../read-length.ts';
import { SOURCES } from '../sources.ts';

/** A request as understood: defaults filled in, and what was filled in told apart. */
export interface Resolved<Input> {
  readonly input: Input;
  readonly assumptions: readonly Assumption[];
  /** Canonical query: fixed key order, defaults left out, shortest numbers. */
  readonly query: string;
}

/** What gathers while one request is read, field by field in the order of the canonical query. */
export interface Reading {
  readonly unit: Unit;
  readonly faults: Fault[];
  readonly assumptions: Assumption[];
  readonly kept: [string, string][];
}

export interface LengthField {
  readonly path: Path;
  readonly given: Length | undefined;
  readonly limit: LengthLimit;
  /** In the unit of the request. Without it the field stands in the query whatever it is. */
  readonly fallback?: number;
  /** Told as an assumption where the value is the fallback. */
  readonly why?: string;
  readonly source?: string;
}

export interface PlainField<T extends number | boolean | string> {
  readonly path: Path;
  readonly given: T | undefined;
  readonly fallback: T;
  readonly why?: string;
  readonly source?: string;
}

/**
 * Starts reading a request.
 *
 * @example
 * startReading('cm').kept // => [['unit', 'cm']]
 */
export function startReading(unit: Unit | undefined): Reading {
  const reading: Reading = { unit: unit ?? 'in', faults: [], assumptions: [], kept: [] };
  readPlain(reading, {
    path: ['unit'],
    given: unit,
    fallback: 'in',
    why: 'Inches unless told',
  });
  return reading;
}

/**
 * Reads one length: written form, range, default. Faults gather in the reading.
 *
 * A default is told as an assumption whether it was left out or spelt out: both have one canonical
 * query, and so must have one answer.
 *
 * @returns the length in the unit of the request, to 9 decimals, so that the canonical query
 * says exactly what was reckoned with; the fallback where it was absent or wrong
 */
export function readLengthField(reading: Reading, field: LengthField): number {
  const { path, given, fallback } = field;
  if (given === undefined) return assume(reading, field, fallback ?? 0);
  const read = readLength(given, reading.unit);
  if (!read.ok) {
    reading.faults.push(...read.faults.map((fault) => ({ ...fault, path })));
    return fallback ?? 0;
  }
  const value = fromMillimetres(read.value, reading.unit, 9);
  const fault = checkRange(reading.unit, value, field);
  if (fault !== undefined) reading.faults.push(fault);
  if (value === fallback) return assume(reading, field, value);
  keep(reading, path, value);
  return value;
}

function checkRange(unit: Unit, value: number, field: LengthField): Fault | undefined {
  const { least, most } = LENGTH_LIMITS[field.limit];
  const millimetres = toMillimetres(value, unit);
  const received = typeof field.given === 'string' ? field.given : value;
  if (millimetres < least - 1e-6) {
    const expected = `${Math.ceil(fromMillimetres(least, unit, 6) * 100) / 100} ${unit}`;
    return { code: 'too-small', path: field.path, expected, received };
  }
  if (millimetres > most + 1e-6) {
    const expected = `${Math.floor(fromMillimetres(most, unit, 6) * 100) / 100} ${unit}`;
    return { code: 'too-large', path: field.path, expected, received };
  }
  return undefined;
}

/**
 * Reads one field that is not a length: fills and tells the default, or keeps what differs from it.
 * Its shape and range were checked before.
 */
export function readPlain<T extends number | boolean | string>(
  reading: Reading,
  field: PlainField<T>,
): T {
  const { path, given, fallback } = field;
  const value = (typeof given === 'number' ? roundTo(given, 9) : (given ?? fallback)) as T;
  if (value === fallback) return assume(reading, field, fallback);
  keep(reading, path, value);
  return value;
}

function assume<T extends number | boolean | string>(
  reading: Reading,
  field: { readonly path: Path; readonly why?: string; readonly source?: string },
  value: T,
): T {
  if (field.why !== undefined) {
    const source = field.source ?? SOURCES.practice;
    reading.assumptions.push({ path: field.path.join('.'), value, why: field.why, source });
  }
  return value;
}

/**
 * Whether nothing was found wrong at any of the given places or inside them, so that a rule between
 * them can be judged.
 *
 * @example
 * isSound({ ...startReading('in'), faults: [{ code: 'empty', path: ['block', 'cut'] }] }, ['block', 'seam']) // => true
 * isSound({ ...startReading('in'), faults: [{ code: 'empty', path: ['block', 'cut'] }] }, ['block']) // => false
 */
export function isSound(
  reading: { readonly faults: readonly Fault[] },
  ...places: readonly Path[]
): boolean {
  return !reading.faults.some(({ path }) =>
    places.some((place) => place.every((key, depth) => path[depth] === key)),
  );
}

/** Puts a field into the canonical query. */
export function keep(reading: Reading, path: Path, value: string | number | boolean): void {
  reading.kept.push([path.join('.'), typeof value === 'number' ? writeNumber(value) : `${value}`]);
}

/**
 * Writes a number with at most 9 decimals and never an exponent.
 *
 * @example
 * writeNumber(8.5) // => '8.5'
 * writeNumber(1e-7) // => '0.0000001'
 */
export function writeNumber(value: number): string {
  const shortest = `${value}`;
  const isPlain = !shortest.includes('e') && shortest.length - shortest.indexOf('.') <= 10;
  return Number.isInteger(value) || isPlain ? shortest : value.toFixed(9).replace(/\.?0+$/, '');
}

/**
 * The canonical query of what was kept.
 *
 * @example
 * writeQuery([['target.width', '40'], ['layers.0.prints.0.id', 'Blue sprig']]) // => 'target.width=40&layers.0.prints.0.id=Blue%20sprig'
 */
export function writeQuery(kept: Reading['kept']): string {
  return kept.map(([key, value]) => `${key}=${encodeURIComponent(value)}`).join('&');
}
