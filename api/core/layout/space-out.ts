/**
 * Lays one row of blocks so that no print stands beside itself: the print with most blocks first,
 * at every second place, then on into the places between.
 *
 * Works whenever no print has more than half the places, rounded up: places that touch are filled
 * at least ⌈n/2⌉ − 1 blocks apart, and a print that goes on from the one run into the other is never
 * the largest, so it has too few. (Textbook rearrangement of a string without equal neighbours.)
 *
 * @param counts blocks of each print, none more than ⌈sum / 2⌉
 * @returns the print at each place
 *
 * @example
 * spaceOut([1, 3, 1]) // => [1, 0, 1, 2, 1]
 */
export function spaceOut(counts: readonly number[]): readonly number[] {
  const prints = counts
    .map((count, print) => ({ count, print }))
    .toSorted((one, other) => other.count - one.count || one.print - other.print)
    .flatMap(({ count, print }) => Array.from({ length: count }, () => print));
  const half = Math.ceil(prints.length / 2);
  return prints.map((_, place) => {
    const turn = place % 2 === 0 ? place / 2 : half + (place - 1) / 2;
    return prints[turn] ?? 0;
  });
}
