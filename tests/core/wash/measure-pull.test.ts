import { describe, expect, test } from 'vitest';
import type { WashRequest } from '#core/contract.ts';
import { describePull, measurePull } from '#core/wash/measure-pull.ts';
import { fitCourses, groupSwatches } from '#core/wash/read-swatches.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';

function pullOf(request: WashRequest) {
  const read = resolveWash(request);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { input } = read.value;
  const courses = fitCourses(groupSwatches(input.swatches, 0.95));
  return measurePull(input, courses, { washes: 1 });
}

describe('measurePull', () => {
  test('measurePull is what a layer wants less what the quilt does', () => {
    const rest = (100 * (170 * 0.05 + 35 * 0.035)) / 205;
    const [top, backing] = pullOf({});
    expect(top).toMatchObject({ layer: 'top' });
    expect(top?.length).toBeCloseTo(3.5 - rest, 4);
    expect(backing?.length).toBeCloseTo(5 - rest, 4);
  });

  test('measurePull has a tight layer above zero and one that puckers below', () => {
    const [top, backing] = pullOf({});
    expect(top?.length).toBeLessThan(0);
    expect(top?.says).toBe('puckers');
    expect(backing?.length).toBeGreaterThan(0);
    expect(backing?.says).toBe('even');
  });

  test('measurePull of layers that want the same is nothing', () => {
    const shrink = { length: 4, width: 3 };
    const pulls = pullOf({
      layers: [
        { role: 'top', shrink },
        { role: 'backing', shrink },
      ],
    });
    expect(pulls.map(({ length, width }) => [length, width])).toEqual([
      [0, 0],
      [0, 0],
    ]);
  });

  test('measurePull goes by the sandwich where it was measured', () => {
    const swatches = [{ fabric: 'sandwich', direction: 'length', before: 10, after: 9.6 }] as const;
    const [top, backing] = pullOf({ swatches });
    expect(top?.length).toBeCloseTo(3.5 - 4, 4);
    expect(backing?.length).toBeCloseTo(5 - 4, 4);
  });
});

describe('describePull', () => {
  test('describePull goes by the direction that pulls hardest', () => {
    expect(describePull(0.6, -0.7)).toBe('puckers');
    expect(describePull(0.7, -0.6)).toBe('tight');
  });

  test('describePull calls half a percent point even', () => {
    expect(describePull(0.5, -0.5)).toBe('even');
  });
});
