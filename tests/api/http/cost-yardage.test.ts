import { expect, test } from 'vitest';
import { resolveYardage } from '#core/wish/resolve-yardage.ts';
import { costYardage } from '../../../api/http/cost-yardage.ts';

test('costYardage grows with the kinds of piece that are tried together', () => {
  const cost = (kinds: number) => {
    const pieces = Array.from({ length: kinds }, (_, at) => {
      return { id: `p${at}`, width: 8, length: 8 + at / 4, count: 3 };
    });
    const resolved = resolveYardage({ fabrics: [{ id: 'f', width: 42, pieces }] });
    return resolved.ok ? costYardage(resolved.value) : Number.NaN;
  };
  expect(cost(1)).toBeLessThan(3);
  expect(cost(24)).toBeGreaterThan(cost(12) * 3);
});
