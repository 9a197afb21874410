import { expect, test } from 'vitest';
import type { PlanRequest } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { costPlan } from '../../../api/http/cost-plan.ts';

function cost(request: PlanRequest): number {
  const understood = resolvePlan(request);
  if (!understood.ok) throw new Error(JSON.stringify(understood.faults));
  return costPlan(understood.value);
}

const target = { columns: 4, rows: 5 };

test('costPlan asks more for more blocks, more cut sizes and more prints', () => {
  const small = cost({ target, block: { cut: 8 } });
  expect(cost({ target: { columns: 20, rows: 25 }, block: { cut: 8 } })).toBeGreaterThan(small);
  const wish = { width: 40, height: 50 };
  const few = cost({ target: wish, cuts: [8] });
  expect(cost({ target: wish, cuts: [6, 7, 8, 9, 10] })).toBeGreaterThan(few);
  const layers = [{ role: 'top' as const, prints: 20 }, { role: 'backing' as const }];
  expect(cost({ target, block: { cut: 8 }, layers })).toBeGreaterThan(small);
});

test('costPlan asks more for more swatches, and for prints that are bought of more offers', () => {
  const swatches = (count: number) =>
    Array.from({ length: count }, () => {
      return { direction: 'length' as const, before: 10, after: 9.7 };
    });
  expect(cost({ target, swatches: swatches(60) })).toBeGreaterThan(cost({ target }) + 10);
  const offered = (prints: number, offers: number) => {
    const squares = { kind: 'pieces' as const, width: 10, length: 10, count: 42 };
    const sold = Array.from({ length: offers }, (_, at) => ({ ...squares, id: `${at}` }));
    const top = { role: 'top' as const, prints, ...(offers > 0 && { offers: sold }) };
    return cost({ target, layers: [top, { role: 'backing' }] });
  };
  // Measured: up to 2.7 ms a print with eight offers, a point being a tenth of one.
  expect(offered(1, 8) - offered(1, 0)).toBeGreaterThan(20);
  expect(offered(26, 8)).toBeGreaterThan(10 * offered(26, 2));
  const top = { kind: 'pieces' as const, id: 'Squares', width: 10, length: 10, count: 42 };
  const layers = [{ role: 'top' as const, offers: [top] }, { role: 'backing' as const }];
  expect(cost({ target, layers, pupils: 2 })).toBeGreaterThan(cost({ target, layers }));
});

test('costPlan lets fifty throws stand in one batch', () => {
  const one = cost({ target: { width: 40, height: 50 } });
  expect(one * SIZE_LIMITS.batch).toBeLessThanOrEqual(SIZE_LIMITS.batchCost);
});
