import { describe, expect, test } from 'vitest';
import { type Draft, writeQuery } from '../../../../client/data/draft.ts';
import { computePlan } from '../../../../client/data/on-device.ts';
import {
  chooseGrid,
  completeDraft,
  listIdle,
  listOtherFaults,
} from '../../../../client/elements/plan/plan-state.ts';
import { planThrow } from '../../../support/plan-throw.ts';

const plan = (draft: Draft) => {
  const outcome = computePlan(writeQuery(draft));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  return outcome.value;
};

describe('completeDraft', () => {
  test('completeDraft({}) plans the same as a throw with nothing else said', () => {
    expect(plan(completeDraft({}))).toEqual(planThrow());
  });

  test('completeDraft leaves a target and layers that are there alone', () => {
    const draft: Draft = { 'target.columns': '4', 'target.rows': '5', 'layers.0.role': 'backing' };
    expect(completeDraft(draft)).toEqual(draft);
  });
});

describe('chooseGrid', () => {
  test('chooseGrid leads to the very plan that was shown, for every one of them', () => {
    const draft = completeDraft({ 'target.width': '47', 'target.height': '61' });
    const { options } = plan(draft);
    expect(options.length).toBeGreaterThan(2);
    for (const option of options) {
      const { grid, block, size } = plan(chooseGrid(draft, option));
      expect({ ...grid, cut: block.cut }).toMatchObject({
        columns: option.columns,
        rows: option.rows,
        cut: option.cut,
      });
      expect(size.washed).toMatchObject(option.washed);
    }
  });
});

describe('listOtherFaults', () => {
  test('listOtherFaults leaves out what a field says itself', () => {
    const faults = [
      { code: 'too-small', path: ['target', 'width'] },
      { code: 'quilt-too-large', path: ['target'] },
      { code: 'not-a-length', path: ['block', 'seam'] },
      { code: 'too-large', path: ['washes'] },
      { code: 'roll-too-narrow', path: ['layers', '1', 'width'] },
    ] as const;
    expect(listOtherFaults(faults).map(({ code }) => code)).toEqual([
      'quilt-too-large',
      'too-large',
    ]);
  });
});

describe('listIdle', () => {
  test('listIdle(plan) names the prints that no block is left for', () => {
    const few = planThrow({ target: { columns: 1, rows: 2 }, block: { cut: 8 } });
    expect(listIdle(few)).toEqual(['C', 'D']);
    expect(listIdle(planThrow())).toEqual([]);
    expect(listIdle()).toEqual([]);
  });
});
