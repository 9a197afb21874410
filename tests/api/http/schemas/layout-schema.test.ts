import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutSchema } from '../../../../api/http/schemas/layout-schema.ts';
import { layoutRequests } from '../../../support/layout-requests.ts';

const base = { columns: 4, rows: 4, prints: [{ id: 'a' }, { id: 'b' }] };
const takes = (input: unknown) => layoutSchema().safeParse(input).success;

describe('layoutSchema', () => {
  test('layoutSchema takes every well-formed wish', () => {
    fc.assert(fc.property(layoutRequests, (request) => takes(request)));
  });

  test.each([
    { ...base, columns: 40, rows: 40 },
    { ...base, seed: 4_294_967_295 },
    { ...base, prints: Array.from({ length: 26 }, (_, at) => ({ id: `${at}` })) },
    {
      ...base,
      prints: [
        { id: 'a', value: 0, color: '#aABB00' },
        { id: 'b', value: 100 },
      ],
    },
  ])('layoutSchema takes %j', (input) => {
    expect(takes(input)).toBe(true);
  });

  test.each([
    { ...base, columns: 41 },
    { ...base, rows: 0 },
    { ...base, columns: 4.5 },
    { ...base, prints: [{ id: 'a' }] },
    { ...base, prints: Array.from({ length: 27 }, (_, at) => ({ id: `${at}` })) },
    { ...base, prints: [{ id: 'a', share: 2 }, { id: 'b' }] },
    { ...base, pattern: 'random' },
    { ...base, touch: 'edges' },
    { ...base, fixed: 'A...' },
    { ...base, fixed: ['A'.repeat(41)] },
    { ...base, seed: -1 },
    { ...base, seed: 4_294_967_296 },
    { ...base, unit: 'in' },
  ])('layoutSchema refuses %j', (input) => {
    expect(takes(input)).toBe(false);
  });
});
