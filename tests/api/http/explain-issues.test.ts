import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { explainIssues } from '../../../api/http/explain-issues.ts';

const schema = z.strictObject({
  n: z.int().min(1).max(9).exactOptional(),
  x: z.number().min(0).max(1).exactOptional(),
  t: z.string().min(2).max(4).exactOptional(),
  on: z.boolean().exactOptional(),
  e: z.enum(['a', 'b']).exactOptional(),
  c: z.string().regex(/^#\d$/, 'a colour as #1').exactOptional(),
  l: z
    .array(z.union([z.number(), z.string().min(1).max(3)]))
    .min(1)
    .max(2)
    .exactOptional(),
  confidence: z.literal([90, 95]).exactOptional(),
  target: z
    .union(
      [
        z.strictObject({ width: z.number(), height: z.number() }),
        z.strictObject({ size: z.enum(['throw']) }),
      ],
      { error: 'target-unclear' },
    )
    .exactOptional(),
  must: z.number().exactOptional(),
});

const explain = (input: unknown, by: z.ZodType = schema) =>
  explainIssues(by.safeParse(input).error?.issues ?? [], input);

describe('explainIssues', () => {
  const rows: readonly [unknown, object][] = [
    [{ n: 2.5 }, { code: 'not-whole', path: ['n'], received: 2.5 }],
    [{ n: 0 }, { code: 'too-small', path: ['n'], expected: 1, received: 0 }],
    [{ n: 10 }, { code: 'too-large', path: ['n'], expected: 9, received: 10 }],
    [{ n: '3' }, { code: 'wrong-type', path: ['n'], expected: ['a number'], received: '3' }],
    [{ x: null }, { code: 'wrong-type', path: ['x'], expected: ['a number'], received: 'null' }],
    [
      { x: Infinity },
      { code: 'wrong-type', path: ['x'], expected: ['a number'], received: 'Infinity' },
    ],
    [{ x: [] }, { code: 'wrong-type', path: ['x'], expected: ['a number'], received: 'list' }],
    [{ x: {} }, { code: 'wrong-type', path: ['x'], expected: ['a number'], received: 'group' }],
    [{ x: '' }, { code: 'empty', path: ['x'] }],
    [{ on: 1 }, { code: 'wrong-type', path: ['on'], expected: ['true or false'], received: 1 }],
    [{ t: 'a' }, { code: 'too-short', path: ['t'], expected: 2, received: 1 }],
    [{ t: 'abcde' }, { code: 'too-long', path: ['t'], expected: 4, received: 5 }],
    [{ t: '' }, { code: 'empty', path: ['t'] }],
    [{ e: 'c' }, { code: 'not-one-of', path: ['e'], expected: ['a', 'b'], received: 'c' }],
    [{ e: '' }, { code: 'empty', path: ['e'] }],
    [{ c: 'red' }, { code: 'bad-name', path: ['c'], expected: 'a colour as #1', received: 'red' }],
    [{ l: [] }, { code: 'too-short', path: ['l'], expected: 1, received: 0 }],
    [{ l: [1, 2, 3] }, { code: 'too-long', path: ['l'], expected: 2, received: 3 }],
    [{ l: [1, 'abcd'] }, { code: 'too-long', path: ['l', 1], expected: 3, received: 4 }],
    [
      { l: [true] },
      { code: 'wrong-type', path: ['l', 0], expected: ['a number', 'text'], received: 'true' },
    ],
    [{ l: [''] }, { code: 'empty', path: ['l', 0] }],
    [
      { confidence: 91 },
      { code: 'not-one-of', path: ['confidence'], expected: ['90', '95'], received: 91 },
    ],
    [{ foo: 1 }, { code: 'unknown-key', path: ['foo'] }],
    [{ target: { width: 1 } }, { code: 'missing', path: ['target', 'height'] }],
    [
      { target: { width: 1, height: 'x' } },
      { code: 'wrong-type', path: ['target', 'height'], expected: ['a number'], received: 'x' },
    ],
    [
      { target: { size: 'x' } },
      { code: 'not-one-of', path: ['target', 'size'], expected: ['throw'], received: 'x' },
    ],
    [{ target: { width: 1, height: 1, z: 1 } }, { code: 'unknown-key', path: ['target', 'z'] }],
    [[], { code: 'wrong-type', path: [], expected: ['a group of parts'], received: 'list' }],
    [null, { code: 'wrong-type', path: [], expected: ['a group of parts'], received: 'null' }],
  ];
  test.each(rows)('%j', (input, fault) => {
    expect(explain(input)).toEqual([fault]);
  });
  test.each([{}, { width: 1, height: 1, size: 'throw' }, 'x', 4])(
    'a target of %j is unclear',
    (target) => {
      expect(explain({ target })).toMatchObject([{ code: 'target-unclear', path: ['target'] }]);
    },
  );
  test('takes the code that a schema gives as message for keys too', () => {
    const named = z.strictObject({ a: z.number() }, { error: 'target-unclear' });
    expect(explain({ a: 1, b: 2 }, named)).toMatchObject([{ code: 'target-unclear', path: [] }]);
  });
  test('tells a required part that is missing, a choice too', () => {
    const required = z.strictObject({
      a: z.number(),
      b: z.union([z.number(), z.string()]),
      e: z.enum(['x']),
    });
    expect(explain({}, required)).toEqual(
      ['a', 'b', 'e'].map((key) => ({ code: 'missing', path: [key] })),
    );
  });
  test('tells what is wrong in the form that a part names, and which names there are', () => {
    const named = z.union([
      z.strictObject({ kind: z.literal('roll'), price: z.int() }),
      z.strictObject({ kind: z.literal('pieces'), count: z.int() }),
    ]);
    expect(explain({ kind: 'roll', price: 2.5 }, named)).toEqual([
      { code: 'not-whole', path: ['price'], received: 2.5 },
    ]);
    expect(explain({ kind: 'jar', price: 2 }, named)).toEqual([
      { code: 'not-one-of', path: ['kind'], expected: ['roll', 'pieces'], received: 'jar' },
    ]);
    expect(explain({ price: 2, count: 1 }, named)).toEqual([{ code: 'missing', path: ['kind'] }]);
  });
  test('tells all at once, and each unknown key by itself', () => {
    const faults = explain({ n: 0, e: 'z', foo: 1, bar: 2, l: [true, 1] });
    expect(faults.map(({ code, path }) => `${code} ${path.join('.')}`)).toEqual([
      'too-small n',
      'not-one-of e',
      'wrong-type l.0',
      'unknown-key foo',
      'unknown-key bar',
    ]);
  });
});
