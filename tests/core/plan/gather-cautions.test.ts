import { describe, expect, test } from 'vitest';
import type { PlanRequest } from '#core/contract.ts';
import { doubtOf, gatherCautions } from '#core/plan/gather-cautions.ts';
import { reckonPlan } from '#core/plan/reckon-plan.ts';
import { planQuilt } from '#core/plan.ts';
import { specifyPlan } from '#core/wish/plan-spec.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

function resolve(request: PlanRequest) {
  const read = resolvePlan(request);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

function gather(request: PlanRequest) {
  const { input } = resolve(request);
  const spec = specifyPlan(input);
  return gatherCautions(input, reckonPlan(spec), spec);
}

describe('gatherCautions', () => {
  test('gatherCautions knows the mattress of a bed, so that a crib is a danger whatever hangs over it', () => {
    const target = { bed: { width: 28, length: 52 } };
    expect(gather({ target }).mattress).toEqual({ width: 711.2, height: 1320.8 });
    const danger = planQuilt(resolve({ target })).cautions.find(
      ({ code }) => code === 'infant-sleep',
    );
    expect(danger?.severity).toBe('danger');
  });

  test('gatherCautions(infant) makes a quilt of any size a danger to a sleeping baby', () => {
    for (const target of [{ width: 100, height: 120 }, { size: 'queen' as const }]) {
      const severity = (request: PlanRequest) =>
        planQuilt(resolve(request)).cautions.find(({ code }) => code === 'infant-sleep')?.severity;
      expect(gather({ target }).infant).toBe(false);
      expect(severity({ target, infant: true })).toBe('danger');
      expect(severity({ target })).toBe('note');
    }
  });

  test('gatherCautions finds no crossing where there is one row or one column', () => {
    expect(gather({ target: { columns: 5, rows: 1 } })).not.toHaveProperty('crossingThickness');
    expect(gather({ target: { columns: 2, rows: 2 } }).crossingThickness).toBeCloseTo(3.6, 9);
  });
});

describe('doubtOf', () => {
  test('doubtOf is how far least and most lie apart', () => {
    const low = { width: 100, height: 200 };
    const high = { width: 103, height: 207 };
    expect(doubtOf({ low, high })).toEqual({ width: 3, height: 7 });
  });
});

describe('the cautions of steps', () => {
  test('every caution that a step names stands among those of the plan', () => {
    for (const layers of [1, 2] as const) {
      const swatches = Array.from({ length: layers === 1 ? 0 : 4 }, (_, index) => ({
        fabric: 'sandwich',
        direction: index % 2 === 0 ? ('length' as const) : ('width' as const),
        before: 10,
        after: 9.6,
      }));
      const { steps, cautions } = planQuilt(resolve({ target: { size: 'throw' }, swatches }));
      const told = cautions.map(({ code }) => code);
      for (const step of steps) expect(told).toEqual(expect.arrayContaining([...step.cautions]));
    }
  });
});
