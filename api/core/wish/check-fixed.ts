import type { LayoutRequest } from '../contract.ts';
import { letterOf } from '../layout/letter-of.ts';
import type { Reading } from './reading.ts';

/**
 * Checks a grid of pins against the grid it is for. Faults, each at its row: `too-short` or `too-long`
 * for a row of other than the columns asked for, and for a number of rows other than that asked for;
 * `not-one-of` for a letter that is no print of the request.
 */
export function checkFixed(
  reading: Reading,
  { columns, rows, prints, fixed }: Pick<LayoutRequest, 'columns' | 'rows' | 'prints' | 'fixed'>,
): void {
  if (fixed === undefined) return;
  checkLength(reading, ['fixed'], [fixed.length, rows]);
  const letters = [...prints.map((_, at) => letterOf(at)), '.'];
  for (const [row, text] of fixed.entries()) {
    const path = ['fixed', row];
    checkLength(reading, path, [text.length, columns]);
    const unknown = [...text].find((letter) => !letters.includes(letter));
    if (unknown === undefined) continue;
    reading.faults.push({ code: 'not-one-of', path, expected: letters, received: unknown });
  }
}

function checkLength(
  reading: Reading,
  path: readonly (string | number)[],
  [received, expected]: readonly [number, number],
): void {
  if (received === expected) return;
  const code = received < expected ? 'too-short' : 'too-long';
  reading.faults.push({ code, path, expected, received });
}

/**
 * How many blocks of each print are pinned.
 *
 * @example
 * countPinned({ prints: [{ id: 'a' }, { id: 'b' }], fixed: ['A.', '.A'] }) // => [2, 0]
 */
export function countPinned({
  prints,
  fixed,
}: Pick<LayoutRequest, 'prints' | 'fixed'>): readonly number[] {
  const letters = fixed?.join('') ?? '';
  return prints.map((_, at) => letters.split(letterOf(at)).length - 1);
}
