import type { Outcome } from '#core/outcome.ts';
import { type ReadWish, readWish } from '#core/wish/read-wish.ts';
import type { Draft } from './draft.ts';

/**
 * Reads a wish in words in the unit of a draft. Fetched when somebody says a wish, so that the element itself
 * stays light.
 *
 * @example
 * readWords('a throw', { unit: 'cm' }) // => { ok: true, value: { unit: 'cm', target: { size: 'throw' } } }
 */
export function readWords(words: string, { unit }: Draft): Outcome<ReadWish> {
  return readWish(words, unit === 'cm' ? 'cm' : 'in');
}
