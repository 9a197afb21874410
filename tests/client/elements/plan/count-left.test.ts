import { expect, test } from 'vitest';
import { countLeft } from '../../../../client/elements/plan/count-left.ts';
import { planThrow } from '../../../support/plan-throw.ts';

test('countLeft begins at all of it and ends at nothing', () => {
  const { steps, time } = planThrow();
  expect(countLeft(steps, [])).toBeCloseTo(time.total, 2);
  expect(
    countLeft(
      steps,
      steps.map(({ id }) => id),
    ),
  ).toBe(0);
  const snip = steps.find(({ id }) => id === 'snip')?.minutes ?? 0;
  expect(countLeft(steps, ['snip', 'not in this plan'])).toBeCloseTo(time.total - snip, 2);
});
