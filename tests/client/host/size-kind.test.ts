import { describe, expect, test } from 'vitest';
import { type Draft, writeQuery } from '../../../client/data/draft.ts';
import { computePlan } from '../../../client/data/on-device.ts';
import { chooseKind, findKind } from '../../../client/host/size-kind.ts';
import { planThrow } from '../../support/plan-throw.ts';

const ANSWER = { grid: { columns: 4, rows: 5 }, wish: { width: 40.5, height: 50 } };

const plan = (draft: Draft) => {
  const outcome = computePlan(writeQuery(draft));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  return outcome.value;
};

describe('findKind and chooseKind', () => {
  test.each(['own', 'bed', 'grid', 'queen', 'cot'] as const)(
    'findKind(chooseKind(draft, %j)) is that kind, and it can be planned in both units',
    (kind) => {
      for (const unit of ['in', 'cm'] as const) {
        // There is no queen among British sizes, but there is in both regions that a unit stands for.
        const draft = chooseKind({ 'target.size': 'throw', unit }, kind, planThrow({ unit }));
        expect(findKind(draft)).toBe(kind);
        expect(plan(draft).grid.blocks).toBeGreaterThan(0);
      }
    },
  );

  test('chooseKind(draft, "own", plan) starts from the size wished for', () => {
    expect(chooseKind({ 'target.size': 'throw' }, 'own', planThrow())).toEqual({
      'target.width': '50',
      'target.height': '60',
    });
  });

  test('chooseKind(draft, "bed") gives figures of the unit, so that they follow it', () => {
    const bed = (unit: 'in' | 'cm') => {
      const draft = chooseKind({ unit }, 'bed');
      return [draft['target.bed.width'], draft['target.bed.length']];
    };
    expect([bed('in'), bed('cm')]).toEqual([
      ['60', '80'],
      ['150', '200'],
    ]);
  });

  test('chooseKind leaves all but the target as it was', () => {
    expect(
      chooseKind({ 'target.columns': '4', 'target.rows': '5', 'block.cut': '8' }, 'lap'),
    ).toEqual({
      'target.size': 'lap',
      'block.cut': '8',
    });
  });

  test('findKind tells how a size is given', () => {
    expect(findKind({ 'target.width': '40', 'target.height': '50' })).toBe('own');
    expect(findKind({ 'target.size': 'lap' })).toBe('lap');
    expect(findKind({ 'target.columns': '4', 'target.rows': '5' })).toBe('grid');
    expect(findKind({ 'target.bed.width': '60', 'target.bed.length': '80' })).toBe('bed');
  });

  test('chooseKind writes eighths of the plan on the table as fractions', () => {
    const own = chooseKind({ 'target.size': 'lap', 'target.region': 'us' }, 'own', ANSWER);
    expect(own).toEqual({ 'target.width': '40½', 'target.height': '50' });
  });
});
