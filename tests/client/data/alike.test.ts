import * as v from 'valibot';
import { expect, test } from 'vitest';
import { alike } from '../../../client/data/alike.ts';

test('alike(schema, ...keys) wants each key', () => {
  const schema = alike(v.number(), 'width', 'height');
  expect(v.is(schema, { width: 1, height: 2 })).toBe(true);
  expect(v.is(schema, { width: 1 })).toBe(false);
  expect(v.is(schema, { width: 1, height: '2' })).toBe(false);
});
