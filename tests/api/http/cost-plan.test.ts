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

test('costPlan lets fifty throws stand in one batch', () => {
  const one = cost({ target: { width: 40, height: 50 } });
  expect(one * SIZE_LIMITS.batch).toBeLessThanOrEqual(SIZE_LIMITS.batchCost);
});
