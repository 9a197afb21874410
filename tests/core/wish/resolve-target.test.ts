import { describe, expect, test } from 'vitest';
import type { Target, Unit } from '#core/contract.ts';
import { LENGTH_LIMITS } from '#core/limits.ts';
import { startReading, writeQuery } from '#core/wish/reading.ts';
import { findWish, resolveTarget } from '#core/wish/resolve-target.ts';

function read(target: Target, unit: Unit = 'in') {
  const reading = startReading(unit);
  const resolved = resolveTarget(reading, target);
  const wish = findWish(resolved, unit);
  return { resolved, wish, ...reading, query: writeQuery(reading.kept) };
}

describe('resolveTarget', () => {
  test('resolveTarget reads two lengths, after washing unless told', () => {
    const { resolved, query, assumptions } = read({ width: '3 ft 4 in', height: '127 cm' });
    expect(resolved).toEqual({ width: 40, height: 50, at: 'washed' });
    expect(query).toBe('target.width=40&target.height=50');
    expect(assumptions.map(({ path }) => path)).toContain('target.at');
  });

  test('resolveTarget takes the region that measures in the unit', () => {
    expect(read({ size: 'queen' }).resolved).toEqual({ size: 'queen', region: 'us' });
    expect(read({ size: 'queen' }, 'cm').resolved).toEqual({ size: 'queen', region: 'eu' });
  });

  test('resolveTarget refuses a size that a region has not, and says which it has', () => {
    const [fault] = read({ size: 'super-king' }).faults;
    expect(fault).toMatchObject({
      code: 'size-not-in-region',
      path: ['target', 'size'],
      received: 'super-king',
    });
    expect(fault?.expected).toContain('california-king');
    expect(fault?.expected).not.toContain('super-king');
  });

  test('resolveTarget tells the drop of a bed known by name, not of a quilt', () => {
    const drops = (target: Target) =>
      read(target).assumptions.filter(({ path }) => path === 'target.drop').length;
    expect(drops({ size: 'queen' })).toBe(1);
    expect(drops({ size: 'throw' })).toBe(0);
  });

  test('resolveTarget lets the foot hang as low as the sides', () => {
    const bed = { width: 60, length: 80 };
    expect(read({ bed }).resolved).toEqual({ bed: { ...bed, drop: 10, footDrop: 10 } });
    expect(read({ bed: { ...bed, drop: 12 } }).resolved).toEqual({
      bed: { ...bed, drop: 12, footDrop: 12 },
    });
    expect(read({ bed: { ...bed, drop: 12, footDrop: 12 } }).query).toBe(
      'target.bed.width=60&target.bed.length=80&target.bed.drop=12',
    );
  });

  test('resolveTarget finds both sides wrong at once', () => {
    const { faults } = read({ width: '1 in', height: '20 yd' });
    expect(faults.map(({ code, path }) => [code, path.join('.')])).toEqual([
      ['too-small', 'target.width'],
      ['too-large', 'target.height'],
    ]);
  });
});

describe('findWish', () => {
  test('findWish for a bed is the mattress, two drops wide and one long', () => {
    const { wish } = read({ bed: { width: 60, length: 80, drop: 12, footDrop: 0 } });
    expect(wish).toEqual({ width: 84 * 25.4, height: 80 * 25.4, at: 'washed' });
  });

  test('findWish for a named bed adds the drop, for a named quilt nothing', () => {
    expect(read({ size: 'queen' }).wish).toEqual({ width: 2032, height: 2286, at: 'washed' });
    expect(read({ size: 'throw' }).wish).toEqual({ width: 1270, height: 1524, at: 'washed' });
    expect(read({ size: 'single', region: 'uk' }, 'cm').wish).toEqual({
      width: 1400,
      height: 2150,
      at: 'washed',
    });
  });

  test('findWish of a grid is nothing', () => {
    expect(read({ columns: 6, rows: 8 }).wish).toBeUndefined();
  });

  test('findWish of the largest bed that is taken stays within what a quilt may be', () => {
    const { faults, wish } = read({ bed: { width: 300, length: 300, drop: 100 } }, 'cm');
    expect(faults).toEqual([]);
    expect(wish?.width).toBeLessThanOrEqual(LENGTH_LIMITS.targetSide.most);
  });
});
