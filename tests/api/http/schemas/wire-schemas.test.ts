import { describe, expect, test } from 'vitest';
import type * as z from 'zod/mini';
import { FABRICS } from '#core/tables/fabrics.ts';
import * as wire from '../../../../api/http/schemas/wire-schemas.ts';

const takes = (schema: z.ZodMiniType, value: unknown) => schema.safeParse(value).success;
const edges = (schema: z.ZodMiniType, ...values: unknown[]) =>
  values.map((value) => takes(schema, value));

describe('wire-schemas', () => {
  test('ranged and counted take both ends of a row of the limits and nothing beyond', () => {
    expect(edges(wire.ranged('spare', ''), 0, 100, -0.001, 100.001, Infinity, NaN, '5')).toEqual([
      true,
      true,
      false,
      false,
      false,
      false,
      false,
    ]);
    expect(edges(wire.counted('washes', ''), 1, 50, 0, 51, 1.5)).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
  });
  test('lengthOf takes a number or text of up to 32 characters', () => {
    const schema = wire.lengthOf('');
    expect(edges(schema, 8.5, '8 1/2', 'x'.repeat(32))).toEqual([true, true, true]);
    expect(edges(schema, '', 'x'.repeat(33), true, null, [8], Infinity)).toEqual(
      Array(6).fill(false),
    );
  });
  test('nameOf takes what people write and no control character or half character', () => {
    const schema = wire.nameOf('');
    expect(edges(schema, 'Blue sprig', '青い花', '🧵', 'a&b=c', '12')).toEqual(Array(5).fill(true));
    expect(edges(schema, '', 'a\nb', 'a\u0000', '\ud800', 'x'.repeat(41))).toEqual(
      Array(5).fill(false),
    );
  });
  test('layerSchema knows every fabric of the table', () => {
    for (const { name } of FABRICS) {
      expect(takes(wire.layerSchema(), { role: 'top', fabric: name })).toBe(true);
    }
    expect(takes(wire.layerSchema(), { role: 'top', fabric: 'felt' })).toBe(false);
  });
  test('layersSchema takes 2 to 4 layers', () => {
    const layers = (count: number) => Array.from({ length: count }, () => ({ role: 'top' }));
    expect(edges(wire.layersSchema(), ...[1, 2, 4, 5].map(layers))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });
  test('printSchema takes a colour of six digits alone', () => {
    const print = (color: string) => ({ id: 'a', color });
    expect(
      edges(wire.printSchema(), ...['#c04030', '#C04030', 'red', '#fff', '#c0403g'].map(print)),
    ).toEqual([true, true, false, false, false]);
  });
  test.each([
    ['shrinkSchema', wire.shrinkSchema(), { length: 3, width: 2 }],
    ['sidesOf', wire.sidesOf(''), { width: 40, height: '50 in' }],
    ['printSchema', wire.printSchema(), { id: 'a' }],
    ['layerSchema', wire.layerSchema(), { role: 'top' }],
  ])('%s refuses a key it does not know', (_, schema, value) => {
    expect(edges(schema, value, { ...value, more: 1 })).toEqual([true, false]);
  });
});
