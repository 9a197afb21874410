import { describe, expect, test } from 'vitest';
import { SIZE_LIMITS } from '#core/limits.ts';
import { writeLinks } from '#core/links.ts';

const places = { self: '/v1/plan', image: '/v1/plan.svg' };

describe('writeLinks', () => {
  test('puts the query behind each path', () => {
    expect(writeLinks('a=1&b=2', places)).toEqual({
      self: '/v1/plan?a=1&b=2',
      image: '/v1/plan.svg?a=1&b=2',
    });
  });
  test('names no address that the service would refuse to read', () => {
    const longest = 'a'.repeat(SIZE_LIMITS.query);
    expect(writeLinks(longest, places).self).toBe(`/v1/plan?${longest}`);
    const links = writeLinks(`${longest}a`, places);
    expect(links.self).toBe('/v1/plan');
    expect(links).not.toHaveProperty('image');
  });
});
