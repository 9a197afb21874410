import type { YardageInput } from '#core/contract.ts';

/**
 * What a yardage costs, in points. Kinds of piece are tried together, so they cost more than one after the other, and
 * they are tried with each offer.
 * Measured with `npm run bench`.
 */
export function costYardage({ input }: { readonly input: YardageInput }): number {
  return input.fabrics.reduce((sum, { pieces, offers = [] }) => {
    const pairs = pieces.length ** 2;
    return sum + 2 + pairs / 3 + 2.5 * pairs * offers.length;
  }, 0);
}
