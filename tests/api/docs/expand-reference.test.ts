import { describe, expect, test } from 'vitest';
import { deriveSchemas } from '../../../api/docs/derive-schemas.ts';

const derive = (text: string) =>
  deriveSchemas(`${text} interface P { p: number; q?: string }`, ['A'])['A'];
const number = { type: 'number' };
const group = (properties: object, required: readonly string[]) => ({
  type: 'object',
  properties,
  required,
});

/** Each a type and the schema of JSON Schema 2020-12 that says the same. */
const rows: readonly [type: string, schema: object][] = [
  ["type A = 'x' | 2 | true;", { enum: ['x', 2, true] }],
  ["type A = number | 'x';", { anyOf: [number, { enum: ['x'] }] }],
  [
    'type A = readonly (number | boolean)[];',
    { type: 'array', items: { anyOf: [number, { type: 'boolean' }] } },
  ],
  ['type A = Readonly<Record<string, number>>;', { type: 'object', additionalProperties: number }],
  ['type A = P;', { $ref: '#/components/schemas/P' }],
  ['type A = Partial<P>;', group({ p: number, q: { type: 'string' } }, [])],
  ["type A = Omit<P, 'p'>;", group({ q: { type: 'string' } }, [])],
  ["type A = Pick<P, 'p'>;", group({ p: number }, ['p'])],
  [
    "type A = P & { readonly 'r-s': 'x' };",
    group({ p: number, q: { type: 'string' }, 'r-s': { enum: ['x'] } }, ['p', 'r-s']),
  ],
  [
    'interface B<T> { t: T; u: readonly T[] } interface A extends B<number> { v?: number }',
    group({ t: number, u: { type: 'array', items: number }, v: number }, ['t', 'u']),
  ],
  [
    'interface B<T> { t: T } type A = readonly B<P>[];',
    { type: 'array', items: group({ t: { $ref: '#/components/schemas/P' } }, ['t']) },
  ],
];

describe('expandReference', () => {
  test.each(rows)('reads %s', (type, schema) => {
    expect(derive(type)).toEqual(schema);
  });
  test.each([
    'type A = keyof P;',
    'type A = [number, number];',
    'type A = () => void;',
    'type A = any;',
  ])('refuses %s and describes nothing as anything', (type) => {
    expect(() => derive(type)).toThrow('not read yet');
  });
});
