import type { Path } from '../outcome.ts';
import type { Reading } from './reading.ts';

/**
 * Finds every name that another has already: fault `repeated-id` at the later one.
 */
export function checkIds(
  reading: Reading,
  named: readonly { readonly id: string }[],
  path: Path,
): void {
  for (const [index, { id }] of named.entries()) {
    if (named.findIndex((other) => other.id === id) === index) continue;
    reading.faults.push({ code: 'repeated-id', path: [...path, index, 'id'], received: id });
  }
}
