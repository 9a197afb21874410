import { describe, expect, test } from 'vitest';
import { spendSteps } from '#core/cloth/strips/spend-steps.ts';

/** Spends so many steps and tells how many it was given. */
const spend = (steps: number) => (budget: { steps: number }) => {
  const given = budget.steps;
  budget.steps -= steps;
  return given;
};

describe('spendSteps', () => {
  test('spendSteps gives no more than asked or left, and takes what was spent', () => {
    const allowance = { steps: 100 };
    expect(spendSteps(allowance, 60, spend(50))).toBe(60);
    expect(spendSteps(allowance, 60, spend(10))).toBe(50);
    expect(allowance.steps).toBe(40);
  });

  test('spendSteps lets work run into debt, and gives nothing out of it', () => {
    const allowance = { steps: 10 };
    spendSteps(allowance, 60, spend(25));
    expect(allowance.steps).toBe(-15);
    expect(spendSteps(allowance, 60, spend(0))).toBe(0);
    expect(allowance.steps).toBe(-15);
  });
});
