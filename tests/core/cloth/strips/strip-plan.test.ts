import { describe, expect, test } from 'vitest';
import { lengthOf, takeOff } from '#core/cloth/strips/strip-plan.ts';

describe('takeOff', () => {
  test('takeOff leaves what is wanted still, and never less than nothing', () => {
    const pattern = { level: 0, counts: [2, 1, 0] };
    expect(takeOff([5, 1, 4], pattern, 2)).toEqual([1, 0, 4]);
    expect(takeOff([5, 1, 4], pattern, 0)).toEqual([5, 1, 4]);
  });
});

describe('lengthOf', () => {
  test('lengthOf adds the heights of all strips', () => {
    const levels = [10, 25].map((height) => ({ height, widths: [], turned: [] }));
    const strips = [
      { pattern: { level: 0, counts: [] }, times: 3 },
      { pattern: { level: 1, counts: [] }, times: 2 },
    ];
    expect(lengthOf(levels, strips)).toBe(80);
    expect(lengthOf(levels, [])).toBe(0);
  });
});
