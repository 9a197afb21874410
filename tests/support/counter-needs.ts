import fc from 'fast-check';
import { choosePlan } from '#core/block/choose-plan.ts';
import type { PlanRequest } from '#core/contract.ts';
import type { CounterNeed } from '#core/counter/counter-need.ts';
import { listNeeds } from '#core/counter/list-needs.ts';
import { specifyPlan } from '#core/wish/plan-spec.ts';
import { deepFreeze } from './deep-freeze.ts';
import { understandPlan } from './plans.ts';

/** What the counter knows of a request that has no fault. */
export function counterFor(request: PlanRequest) {
  const { input } = understandPlan(request);
  const spec = deepFreeze(specifyPlan(input));
  const choice = choosePlan(spec);
  return { spec, choice, needs: deepFreeze(listNeeds(spec, choice.chosen)) };
}

/** One cloth by eighths of an inch, prewashed or not. */
export const drawnNeed: fc.Arbitrary<CounterNeed> = fc
  .record({
    eighths: fc.integer({ min: 32, max: 160 }),
    squares: fc.integer({ min: 1, max: 300 }),
    width: fc.integer({ min: 20, max: 120 }),
    length: fc.constantFrom(0, 0.03, 0.06),
  })
  .map(({ eighths, squares, width, length }) =>
    deepFreeze({
      cut: (eighths / 8) * 25.4,
      squares,
      spare: 0,
      roll: { width: width * 25.4, selvage: 12.7, prewash: { length, width: length / 2 } },
      squaring: 25.4,
      step: 114.3,
      unit: 'in' as const,
    }),
  );
