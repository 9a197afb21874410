import { describe, expect, test } from 'vitest';
import { computePlan } from '../../../client/data/on-device.ts';
import { planThrow } from '../../support/plan-throw.ts';

describe('computePlan', () => {
  test('computePlan(query) is the plan of the core for that request', () => {
    const request = {
      unit: 'cm',
      target: { width: 120, height: '1.5 m' },
      block: { cut: 20 },
    } as const;
    const outcome = computePlan('unit=cm&target.width=120&target.height=1.5%20m&block.cut=20');
    expect(outcome).toEqual({ ok: true, value: planThrow(request) });
  });

  test('computePlan finds faults of shape', () => {
    const outcome = computePlan('target.size=lap&washes=often&foo=1');
    expect(outcome.ok ? [] : outcome.faults.map(({ code }) => code)).toEqual([
      'wrong-type',
      'unknown-key',
    ]);
  });

  test('computePlan finds faults of meaning', () => {
    const outcome = computePlan('target.size=lap&block.cut=6&block.seam=3');
    expect(outcome.ok ? [] : outcome.faults.map(({ code }) => code)).toEqual(['seam-eats-face']);
  });
});
