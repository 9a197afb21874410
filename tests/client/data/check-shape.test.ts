import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { whole } from '../../../client/data/bounded.ts';
import { checkShape } from '../../../client/data/check-shape.ts';

const schema = v.object({ inner: v.object({ count: whole({ least: 1, most: 3 }) }) });

describe('checkShape', () => {
  test('checkShape gives back what has the shape', () => {
    const value = { inner: { count: 2 } };
    expect(checkShape(schema, value)).toEqual({ ok: true, value });
  });

  test('checkShape tells of a bound and of a key that has no place, each where it is', () => {
    expect(checkShape(schema, { inner: { count: 4, more: 1 } })).toMatchObject({
      ok: false,
      faults: [
        { code: 'too-large', path: ['inner', 'count'], expected: '3', received: 4 },
        { code: 'unknown-key', path: ['inner', 'more'] },
      ],
    });
  });
});
