import { describe, expect, test } from 'vitest';
import { USUAL_SPREAD } from '#core/wash/count-swatches.ts';
import { doubtSize } from '#core/wash/doubt-size.ts';

const shrink = { least: { width: 0.02, height: 0.01 }, most: { width: 0.04, height: 0.07 } };

describe('doubtSize', () => {
  test('doubtSize is half the gap between least and most, in percent points', () => {
    const { percent } = doubtSize(shrink, [], 0.95);
    expect(percent.width).toBeCloseTo(1, 12);
    expect(percent.height).toBeCloseTo(3, 12);
  });

  test('doubtSize counts the swatches whose interval is half as wide, by the printed t of 95 %', () => {
    // Half of 3 points is 1.5; t(4)·0.5·√(1 + 1/5) = 1.52, t(5)·0.5·√(1 + 1/6) = 1.39.
    expect(doubtSize(shrink, [], 0.95).swatches).toBe(6);
  });

  test('doubtSize goes by the pooled spread that was measured', () => {
    const groups = [{ n: 3, sd: USUAL_SPREAD / 2 }, { n: 1 }, { n: 4, sd: USUAL_SPREAD / 2 }];
    // t(2)·0.25·√(4/3) = 1.242 is within 1.5, t(1)·0.25·√1.5 = 3.89 is not.
    expect(doubtSize(shrink, groups, 0.95).swatches).toBe(3);
  });

  test('doubtSize leaves the count out where the cloth itself varies more', () => {
    const groups = [{ n: 5, sd: 2 }];
    expect(doubtSize(shrink, groups, 0.95)).not.toHaveProperty('swatches');
  });
});
