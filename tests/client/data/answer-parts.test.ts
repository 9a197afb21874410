import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { many, number, pair, role } from '../../../client/data/answer-parts.ts';

describe('parts of answers', () => {
  test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e13, '1', null])(
    'number refuses %s',
    (value) => {
      expect(v.is(number, value)).toBe(false);
    },
  );

  test('many refuses a list without end', () => {
    expect(v.is(many(number), Array(10_000).fill(1))).toBe(true);
    expect(v.is(many(number), Array(10_001).fill(1))).toBe(false);
  });

  test('pair and role are those of the contract', () => {
    expect(v.is(pair, { width: 1, height: 2 })).toBe(true);
    expect(v.is(pair, { width: 1 })).toBe(false);
    expect(v.is(role, 'binding')).toBe(false);
  });
});
