import { expect, test } from 'vitest';
import { resolveYardage } from '#core/wish/resolve-yardage.ts';
import { costYardage } from '../../../api/http/cost-yardage.ts';

test('costYardage grows with the kinds of piece that are tried together', () => {
  expect(cost(1)).toBeLessThan(3);
  expect(cost(24)).toBeGreaterThan(cost(12) * 3);
});

test('costYardage grows with the offers that each is tried with', () => {
  expect(cost(4, 8)).toBeGreaterThan(4 * cost(4, 1));
  // Measured: 12 ms for four kinds and four offers, a point being a tenth of one.
  expect(cost(4, 4)).toBeGreaterThan(100);
});

function cost(kinds: number, offers = 0): number {
  const pieces = Array.from({ length: kinds }, (_, at) => {
    return { id: `p${at}`, width: 8, length: 8 + at / 4, count: 3 };
  });
  const sold = Array.from({ length: offers }, (_, at) => ({ kind: 'roll' as const, id: `${at}` }));
  const fabric = { id: 'f', width: 42, pieces, ...(offers > 0 && { offers: sold }) };
  const resolved = resolveYardage({ fabrics: [fabric] });
  return resolved.ok ? costYardage(resolved.value) : Number.NaN;
}
