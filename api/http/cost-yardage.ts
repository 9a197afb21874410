import type { YardageInput } from '#core/contract.ts';

/**
 * What a yardage costs, in points. Kinds of piece are tried together, so they cost more than one after the other.
 * Measured with `npm run bench`.
 */
export function costYardage({ input }: { readonly input: YardageInput }): number {
  return input.fabrics.reduce((sum, { pieces }) => sum + 2 + pieces.length ** 2 / 3, 0);
}
