/**
 * Shares whole blocks among prints by the largest remainder method with the Hare quota (Hamilton):
 * each gets the whole part of its due, and what is left goes to the largest remainders, ties to the
 * earlier print.
 *
 * @param blocks whole, 0 or more
 * @param shares weights, none negative, sum above 0
 * @returns whole numbers that sum to `blocks`
 *
 * @example
 * apportionBlocks(10, [47000, 16000, 15900, 12000, 6000, 3100]) // => [5, 2, 1, 1, 1, 0]
 */
export function apportionBlocks(blocks: number, shares: readonly number[]): readonly number[] {
  const total = shares.reduce((sum, share) => sum + share, 0);
  const dues = shares.map((share) => (blocks * share) / total);
  const wholes = dues.map((due) => Math.floor(due + 1e-9));
  const left = blocks - wholes.reduce((sum, whole) => sum + whole, 0);
  const order = dues
    .map((due, index) => ({ index, remainder: due - (wholes[index] ?? 0) }))
    .toSorted((one, other) =>
      Math.abs(one.remainder - other.remainder) < 1e-9
        ? one.index - other.index
        : other.remainder - one.remainder,
    );
  const extra = new Set(order.slice(0, left).map((entry) => entry.index));
  return wholes.map((whole, index) => whole + (extra.has(index) ? 1 : 0));
}
