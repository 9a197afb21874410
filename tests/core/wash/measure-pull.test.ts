import { describe, expect, test } from 'vitest';
import type { WashRequest } from '#core/contract.ts';
import { adviseOnPrewash, measurePull, PULL_LIMIT } from '#core/wash/measure-pull.ts';
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
    const rest = (100 * (170 * 0.06 + 35 * 0.035)) / 205;
    const [top, backing] = pullOf({});
    expect(top).toMatchObject({ layer: 'top' });
    expect(top?.length).toBeCloseTo(3.5 - rest, 4);
    expect(backing?.length).toBeCloseTo(6 - rest, 4);
  });

  test('measurePull has a tight layer above zero and one that puckers below', () => {
    const [top, backing] = pullOf({});
    expect(top?.width).toBeLessThan(0);
    expect(backing?.width).toBeGreaterThan(0);
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
    expect(backing?.length).toBeCloseTo(6 - 4, 4);
  });
});

describe('adviseOnPrewash', () => {
  const pull = (length: number, width: number) =>
    [
      { layer: 'top', length: -length / 2, width: -width / 2 },
      { layer: 'backing', length: length / 2, width: width / 2 },
    ] as const;

  test('adviseOnPrewash is silent up to the limit and speaks beyond it', () => {
    expect(adviseOnPrewash(pull(PULL_LIMIT, 0)).advised).toBe(false);
    const { advised, why } = adviseOnPrewash(pull(0, PULL_LIMIT + 1));
    expect(advised).toBe(true);
    expect(why).toContain('3 percent points apart');
    expect(why).toContain('prewash the backing,');
  });

  test('adviseOnPrewash names the layer that is tight where the gap is widest', () => {
    const { why } = adviseOnPrewash([
      { layer: 'top', length: 1, width: -1.5 },
      { layer: 'backing', length: 0.5, width: 0.8 },
    ]);
    expect(why).toContain('prewash the backing,');
  });

  test('adviseOnPrewash of a layer that was prewashed says once more', () => {
    const { why } = adviseOnPrewash(pull(4, 0), [false, true]);
    expect(why).toContain('prewash the backing once more,');
  });
});
