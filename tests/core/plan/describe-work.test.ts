import fc from 'fast-check';
import { expect, test } from 'vitest';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { planFor } from '../../support/plans.ts';
import { planRequests } from '../../support/requests.ts';

test('describeWork: minutes of steps sum to the total, and no step warns of what the plan does not', () => {
  fc.assert(
    fc.property(planRequests, (request) => {
      fc.pre(resolvePlan(request).ok);
      const { steps, time, cautions } = planFor(request);
      const sum = steps.reduce((all, { minutes }) => all + minutes, 0);
      expect(sum).toBeCloseTo(time.total, 2);
      const told = new Set(cautions.map(({ code }) => code));
      for (const step of steps) expect(step.cautions.every((code) => told.has(code))).toBe(true);
    }),
    { numRuns: 60 },
  );
});

test('describeWork: the figures of the steps are those of the answer', () => {
  const answer = planFor({ target: { size: 'lap' } });
  const figuresOf = (id: string) => answer.steps.find((step) => step.id === id)?.figures;
  const { fringe, block, mismatch, work, weight } = answer;
  expect(figuresOf('snip')).toMatchObject({
    snips: fringe.snips,
    snipsJoined: fringe.snipsJoined,
    minutesJoined: fringe.minutesJoined,
    clearance: block.clearance,
  });
  const { half, most, mostFromOneEnd, ends, unpick, unpickFromOneEnd, within } = mismatch;
  expect(figuresOf('join-rows')).toMatchObject({
    ...{ half, most, mostFromOneEnd, ends, unpick, unpickFromOneEnd, within },
    ...work.middle,
  });
  expect(figuresOf('border')).toMatchObject({ perimeter: work.perimeter });
  expect(figuresOf('layout')).toMatchObject({ topLeft: work.topLeft.letter });
  expect(figuresOf('wash')).toEqual({ wet: weight.wet, unit: weight.unit });
});
