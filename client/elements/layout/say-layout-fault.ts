import { letterOf } from '#core/layout/letter-of.ts';
import { nameRow } from '#core/layout/name-row.ts';
import type { Fault } from '#core/outcome.ts';
import type { LayoutWords } from '../../text/layout/source.ts';

/**
 * The sentence for what can be wrong with a layout alone: with the grid that was handed over, and with pins.
 *
 * @returns nothing for a fault that any request can have.
 */
export function sayLayoutFault(words: LayoutWords, fault: Fault): string | undefined {
  const { code, path, received = '' } = fault;
  const [place, at, name] = path;
  if (place === 'prints' && name === 'count' && code === 'too-small') {
    const pinned = Number.parseInt(`${fault.expected}`, 10);
    return pinned > 0 ? words.tooFew(letterOf(Number(at)), pinned) : undefined;
  }
  if (place !== 'fixed') return undefined;
  if (at === undefined) return words.ragged;
  if (code === 'not-one-of') return words.stranger(nameRow(Number(at)), `${received}`);
  return code === 'too-short' || code === 'too-long'
    ? words.uneven(nameRow(Number(at)))
    : words.ragged;
}
