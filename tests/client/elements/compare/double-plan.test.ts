import { describe, expect, test } from 'vitest';
import { computePlan } from '../../../../client/data/on-device.ts';
import { doublePlan } from '../../../../client/elements/compare/double-plan.ts';

function plan(query: string) {
  const outcome = computePlan(query);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  return outcome.value;
}

describe('doublePlan', () => {
  test.each([
    ['target.columns=4&target.rows=5', 'long', [4, 10]],
    ['target.columns=4&target.rows=5', 'both', [8, 10]],
    ['target.columns=3&target.rows=3&block.cut=9&unit=in', 'both', [6, 6]],
  ] as const)('of %s, %s, has a grid of %j', (query, doubling, [columns, rows]) => {
    const one = plan(query);
    const other = plan(doublePlan(query, one, doubling));
    expect(other.grid).toMatchObject({ columns, rows });
    expect(other.block.cut).toBe(one.block.cut);
  });

  test.each([
    ['target.size=throw', 'long', [1, 2]],
    ['target.width=40&target.height=50&target.at=sewn', 'both', [2, 2]],
    ['unit=cm&target.bed.width=90&target.bed.length=190&target.bed.drop=30', 'both', [2, 2]],
  ] as const)('of %s, %s, wishes for the size times %j', (query, doubling, [across, down]) => {
    const one = plan(query);
    const other = plan(doublePlan(query, one, doubling));
    expect(other.wish.width).toBeCloseTo(one.wish.width * across, 3);
    expect(other.wish.height).toBeCloseTo(one.wish.height * down, 3);
    expect(other.block.cut).toBe(one.block.cut);
    expect(other.input.unit).toBe(one.input.unit);
  });

  test('keeps the proportion of prints that were counted', () => {
    const query =
      'target.columns=4&target.rows=5&layers.0.role=top&layers.0.prints.0.id=Moss&layers.0.prints.0.count=15&layers.0.prints.1.id=Rust&layers.0.prints.1.count=5&layers.1.role=backing';
    const doubled = plan(doublePlan(query, plan(query), 'both'));
    expect(doubled.work.stacks.map(({ blocks }) => blocks)).toEqual([60, 20]);
  });

  test('keeps all that was asked beside the size', () => {
    const query =
      'target.size=lap&washes=3&layers.0.role=top&layers.0.prints=4&layers.1.role=backing';
    const doubled = doublePlan(query, plan(query), 'long');
    expect(plan(doubled).input).toMatchObject({
      washes: 3,
      layers: [{ role: 'top' }, { role: 'backing' }],
    });
    expect(doubled).toContain('layers.0.prints=4');
  });
});
