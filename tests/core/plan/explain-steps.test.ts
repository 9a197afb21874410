import { expect, test } from 'vitest';
import { explainSteps } from '#core/plan/explain-steps.ts';
import { judgeDerivations } from '../../support/judge-derivations.ts';
import { explainedFor, planFor } from '../../support/plans.ts';

test('explainSteps derives the minutes of each step that takes any', () => {
  const request = { target: { width: 40, height: 50 } };
  const { steps } = planFor(request);
  const rows = explainSteps(steps, explainedFor(request).plan.time);
  expect(judgeDerivations(rows, { steps })).toEqual([]);
  const timed = steps.flatMap(({ minutes }, at) => (minutes > 0 ? [`steps.${at}.minutes`] : []));
  expect(rows.map(({ path }) => path)).toEqual(timed);
});
