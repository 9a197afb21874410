import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pivotBasis } from '#core/cloth/strips/pivot-basis.ts';
import { startBasis } from '#core/cloth/strips/start-basis.ts';
import { BY_HAND, problemOf } from '../../../support/strip-cases.ts';

describe('pivotBasis', () => {
  test('pivotBasis keeps amounts that place every piece, and an inverse of its basis', () => {
    const pattern = fc
      .tuple(fc.nat(3), fc.nat(3), fc.nat(3))
      .filter((all) => all.some((one) => one > 0));
    fc.assert(
      fc.property(fc.array(pattern, { minLength: 1, maxLength: 6 }), (entering) => {
        const problem = problemOf(BY_HAND);
        const tableau = startBasis(problem);
        for (const counts of entering) pivotBasis(tableau, { pattern: { level: 3, counts } });
        const columns = tableau.basis.map(({ pattern }) => pattern?.counts ?? []);
        for (const [kind, wanted] of problem.demand.entries()) {
          const placed = columns.reduce(
            (sum, counts, row) => sum + (counts[kind] ?? 0) * (tableau.amounts[row] ?? 0),
            0,
          );
          expect(placed).toBeCloseTo(wanted, 6);
        }
        for (const [row, line] of tableau.inverse.entries()) {
          const products = columns.map((counts) =>
            counts.reduce((sum, count, kind) => sum + count * (line[kind] ?? 0), 0),
          );
          for (const [column, product] of products.entries()) {
            expect(product).toBeCloseTo(row === column ? 1 : 0, 6);
          }
        }
        expect(Math.min(...tableau.amounts)).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});
