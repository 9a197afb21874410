import { describe, expect, test } from 'vitest';
import { yardageSchema } from '../../../../api/http/schemas/yardage-schema.ts';

const piece = { id: 'backing', width: '8 1/2', length: 8.5, count: 42 };
const fabric = { id: 'Fog flannel', width: 42, pieces: [piece] };
const accepts = (value: unknown) => yardageSchema().safeParse(value).success;

describe('yardageSchema', () => {
  test('takes rolls, offers and pieces', () => {
    const offers = [
      { kind: 'roll', id: 'bolt', price: 890 },
      { kind: 'pieces', id: 'quarter', width: 21, length: 18, count: 1, most: 3 },
    ];
    expect(accepts({ fabrics: [{ ...fabric, offers, lengthLeft: '2 yd' }] })).toBe(true);
  });

  test.each([
    ['no fabric', { fabrics: [] }],
    ['25 kinds of piece', { fabrics: [{ ...fabric, pieces: Array(25).fill(piece) }] }],
    ['no piece', { fabrics: [{ ...fabric, pieces: [{ ...piece, count: 0 }] }] }],
    ['10 000 pieces', { fabrics: [{ ...fabric, pieces: [{ ...piece, count: 10_000 }] }] }],
    ['an unknown key', { fabrics: [{ ...fabric, colour: 'fog' }] }],
  ])('refuses %s', (_, value) => {
    expect(accepts(value)).toBe(false);
  });
});
