import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { line, list, whole, within } from '../../../client/data/bounded.ts';

const messages = (schema: v.GenericSchema, value: unknown) =>
  (v.safeParse(schema, value).issues ?? []).map(({ message }) => message);

describe('within', () => {
  const schema = within({ least: -1, most: 2 });

  test('within(range) takes both ends', () => {
    expect(messages(schema, -1)).toEqual([]);
    expect(messages(schema, 2)).toEqual([]);
  });

  test('within(range) refuses what lies outside and says the bound', () => {
    expect(messages(schema, -1.01)).toEqual(['too-small -1']);
    expect(messages(schema, 2.01)).toEqual(['too-large 2']);
  });

  test.each([Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NaN, '1', null, undefined])(
    'within(range) refuses %s',
    (value) => {
      expect(messages(schema, value)).toHaveLength(1);
    },
  );
});

describe('whole', () => {
  test('whole(range) refuses a part of a number', () => {
    expect(messages(whole({ least: 0, most: 9 }), 2)).toEqual([]);
    expect(messages(whole({ least: 0, most: 9 }), 2.5)).toEqual(['not-whole']);
  });
});

describe('line', () => {
  test('line(most) takes 1 to most characters', () => {
    expect(messages(line(3), 'abc')).toEqual([]);
    expect(messages(line(3), '')).toEqual(['empty']);
    expect(messages(line(3), 'abcd')).toEqual(['too-long 3']);
  });
});

describe('list', () => {
  test('list(item, range) counts and checks its items', () => {
    const schema = list(v.string(), { least: 1, most: 2 });
    expect(messages(schema, ['a', 'b'])).toEqual([]);
    expect(messages(schema, [])).toEqual(['too-short 1']);
    expect(messages(schema, ['a', 'b', 'c'])).toEqual(['too-long 2']);
    expect(messages(schema, [1])).toHaveLength(1);
  });
});
