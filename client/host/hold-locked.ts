import type { AnyDraft } from '../data/draft.ts';
import { isUnder } from './is-under.ts';

/**
 * A draft with its locked places as the host has them.
 *
 * @example
 * holdLocked({ 'block.cut': '9', washes: '2' }, { 'block.cut': '8' }, ['block']) // => { washes: '2', 'block.cut': '8' }
 */
export function holdLocked<Kind extends AnyDraft>(
  draft: Kind,
  host: Kind,
  locked: readonly string[],
): Kind {
  const pick = (from: Kind, isHeld: boolean) =>
    Object.entries(from).filter(([path]) => isUnder(path, locked) === isHeld);
  return Object.fromEntries([...pick(draft, false), ...pick(host, true)]) as Kind;
}
