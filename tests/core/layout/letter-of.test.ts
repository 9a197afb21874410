import { describe, expect, test } from 'vitest';
import { letterOf } from '#core/layout/letter-of.ts';
import { SIZE_LIMITS } from '#core/limits.ts';

describe('letterOf', () => {
  test('letterOf(0), (2), (25) are A, C, Z', () => {
    expect([0, 2, 25].map(letterOf)).toEqual(['A', 'C', 'Z']);
  });

  test('letterOf gives every print that a quilt may have a capital of its own', () => {
    const letters = Array.from({ length: SIZE_LIMITS.prints }, (_, index) => letterOf(index));
    expect(new Set(letters).size).toBe(SIZE_LIMITS.prints);
    for (const letter of letters) expect(letter).toMatch(/^[A-Z]$/);
  });
});
