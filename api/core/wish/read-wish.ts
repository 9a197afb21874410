import type { Target, Unit } from '../contract.ts';
import { SIZE_LIMITS } from '../limits.ts';
import { fail, type Outcome, succeed } from '../outcome.ts';
import { readCounts } from './read-counts.ts';
import { readSides } from './read-sides.ts';
import { readSizeName } from './read-size-name.ts';

/** What was understood of a wish in words. */
export interface ReadWish {
  readonly unit: Unit;
  readonly target: Target;
}

/**
 * Reads a wish in plain words: columns and rows of blocks, else two lengths with "by" or "x" between
 * them (or one that is said to be square), else the name of a size. Figures win over a name, since
 * they say more.
 *
 * @param text at most 300 characters
 * @param unit the unit of bare numbers where the words name none
 * @returns unit and target for a request; fault `wish-unclear` with an empty path
 *
 * @example
 * readWish('a throw for the reading room, about 40 by 50 inches', 'cm') // => { ok: true, value: { unit: 'in', target: { width: 40, height: 50 } } }
 * readWish('queen', 'in') // => { ok: true, value: { unit: 'in', target: { size: 'queen' } } }
 * readWish('6 by 8 blocks', 'in') // => { ok: true, value: { unit: 'in', target: { columns: 6, rows: 8 } } }
 */
export function readWish(text: string, unit: Unit): Outcome<ReadWish> {
  const words = text.slice(0, SIZE_LIMITS.wishText);
  const counts = readCounts(words);
  if (counts !== undefined) return succeed({ unit, target: counts });
  const wish = readSides(words, unit) ?? readSizeName(words, unit);
  return wish === undefined
    ? fail([{ code: 'wish-unclear', path: [], received: words }])
    : succeed(wish);
}
