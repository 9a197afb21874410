import { describe, expect, test } from 'vitest';
import { findStep, WORK_FACTS, workSteps } from '../../support/work-facts.ts';

const STAGES = ['prepare', 'cut', 'stack', 'quilt', 'snip', 'layout', 'join', 'border', 'wash'];

describe('orderWork', () => {
  test('orderWork goes through the stages in the order of the trade, each id once', () => {
    const ids = workSteps().map((step) => step.id);
    expect(new Set(ids).size).toBe(ids.length);
    const order = workSteps().map((step) => STAGES.indexOf(step.stage));
    expect(order).toEqual(order.toSorted((one, other) => one - other));
    expect(new Set(order).size).toBe(STAGES.length);
  });

  test('orderWork counts what there is to do', () => {
    const counts = Object.fromEntries(workSteps().map((step) => [step.id, step.count]));
    expect(counts).toMatchObject({
      cut: 102,
      stack: 48,
      'quilt-first': 48,
      part: 47,
      'quilt-second': 48,
      snip: 6336,
      layout: 48,
      join: 40,
      'join-rows': 7,
      border: 2,
    });
  });

  test('orderWork shares out all the minutes, and gives washing none', () => {
    const sum = workSteps().reduce((all, { minutes }) => all + minutes, 0);
    expect(sum).toBeCloseTo(WORK_FACTS.time.total, 3);
    expect(findStep('wash')?.minutes).toBe(0);
    expect(findStep('quilt-first')?.minutes).toBe(findStep('quilt-second')?.minutes);
  });

  test('orderWork counts nothing that is not there', () => {
    expect(workSteps({ columns: 1, rows: 1 }).every((step) => step.count > 0)).toBe(true);
  });

  test('orderWork warns at the cutter, the snips, the crossings and the dryer', () => {
    const told = workSteps().flatMap((step) => step.cautions);
    for (const code of [
      'rotary-cutter',
      'repetitive-snipping',
      'needle-at-crossings',
      'dryer-lint',
    ]) {
      expect(told).toContain(code);
    }
  });
});
