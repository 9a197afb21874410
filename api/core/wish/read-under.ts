import type { Path } from '../outcome.ts';
import type { Reading } from './reading.ts';

/**
 * Reads a part of a request with what is written for a whole one: everything that gathers is put
 * below a place.
 *
 * @param place keys from the root
 * @param read reads the part as if it stood at the root
 */
export function readUnder<T>(reading: Reading, place: Path, read: (inner: Reading) => T): T {
  const inner: Reading = { unit: reading.unit, faults: [], assumptions: [], kept: [] };
  const value = read(inner);
  takeUnder(reading, place, inner);
  return value;
}

/**
 * Puts what gathered elsewhere below a place.
 */
export function takeUnder(
  reading: Reading,
  place: Path,
  inner: Pick<Reading, 'faults' | 'assumptions' | 'kept'>,
): void {
  const prefix = place.join('.');
  reading.faults.push(
    ...inner.faults.map((fault) => ({ ...fault, path: [...place, ...fault.path] })),
  );
  reading.assumptions.push(
    ...inner.assumptions.map((one) => ({ ...one, path: `${prefix}.${one.path}` })),
  );
  for (const [key, value] of inner.kept) reading.kept.push([`${prefix}.${key}`, value]);
}
