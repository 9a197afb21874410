import { noChange } from 'lit';

/** What each place of a view was last made of. */
export type Memo = Map<string, readonly unknown[]>;

/**
 * A part of a view, made anew only where what it is made of is another; else what is there stays untouched.
 *
 * @param memo of one element, as long as that part stands in its view.
 */
export function ifChanged(
  memo: Memo,
  [place, ...keys]: readonly [place: string, ...keys: readonly unknown[]],
  make: () => unknown,
): unknown {
  const before = memo.get(place);
  const isSame = before?.length === keys.length && keys.every((key, at) => key === before[at]);
  if (isSame) return noChange;
  memo.set(place, keys);
  return make();
}
