import { describe, expect, test } from 'vitest';
import { listKitCautions } from '#core/kits/list-kit-cautions.ts';
import { reckonPlan } from '#core/plan/reckon-plan.ts';
import { specifyPlan } from '#core/wish/plan-spec.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

const cautionsOf = (width: number, height: number) => {
  const read = resolvePlan({ target: { width, height } });
  if (!read.ok) throw new Error('refused');
  const { input } = read.value;
  const spec = specifyPlan(input);
  return listKitCautions(input, reckonPlan(spec), spec);
};

describe('listKitCautions', () => {
  test('listKitCautions says that the care label rule covers clothing, not quilts (16 CFR 423)', () => {
    const label = cautionsOf(60, 70).find(({ code }) => code === 'label-rules');
    expect(label?.text).toContain('16 CFR 423');
    expect(label?.text).toContain('country to country');
  });

  test('listKitCautions tells sellers of children and fire, and leaves out the sewing', () => {
    expect(cautionsOf(60, 70).map(({ code }) => code)).toEqual([
      'rotary-cutter',
      'infant-sleep',
      'dye-bleed',
      'flammability',
      'selling-children',
      'label-rules',
    ]);
  });

  test('listKitCautions puts the danger of a cot quilt first', () => {
    expect(cautionsOf(30, 40)[0]).toMatchObject({ code: 'infant-sleep', severity: 'danger' });
  });
});
