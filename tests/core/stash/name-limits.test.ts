import { describe, expect, test } from 'vitest';
import { nameLimits } from '#core/stash/name-limits.ts';

const grids = [{ blocks: 20 }, { blocks: 12 }, { blocks: 6 }];
const supply = (top: number, backing: number) => ({
  roles: [
    { role: 'top' as const, blocks: top },
    { role: 'backing' as const, blocks: backing },
  ],
});
const usual = { grids, hasLarger: false, hasTarget: false };

describe('nameLimits', () => {
  test('nameLimits names every role that is short of the next larger grid', () => {
    expect(nameLimits({ ...usual, blocks: 6, supply: supply(11, 40) })).toEqual(['top']);
    expect(nameLimits({ ...usual, blocks: 6, supply: supply(11, 8) })).toEqual(['top', 'backing']);
  });

  test('nameLimits: cloth enough and no plan means that like prints would meet', () => {
    expect(nameLimits({ ...usual, blocks: 6, supply: supply(30, 30) })).toEqual(['touch']);
    expect(nameLimits({ ...usual, blocks: 0, supply: supply(6, 6) })).toEqual(['touch']);
  });

  test('nameLimits: nothing larger is a size reached, or the greatest quilt', () => {
    expect(nameLimits({ ...usual, blocks: 20, supply: supply(90, 90) })).toEqual(['greatest']);
    const reached = { ...usual, blocks: 20, supply: supply(90, 90), hasTarget: true };
    expect(nameLimits(reached)).toEqual(['target']);
  });

  test('nameLimits: a plan beside a larger one is there for its shape', () => {
    expect(nameLimits({ ...usual, blocks: 6, supply: supply(30, 30), hasLarger: true })).toEqual([
      'shape',
    ]);
  });
});
