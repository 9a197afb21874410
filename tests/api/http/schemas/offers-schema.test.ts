import { describe, expect, test } from 'vitest';
import { SIZE_LIMITS } from '#core/limits.ts';
import { offersSchema } from '../../../../api/http/schemas/offers-schema.ts';

const roll = { kind: 'roll', id: 'bolt' };
const pieces = { kind: 'pieces', id: 'quarter', width: 21, length: '18 in', count: 1 };
const accepts = (...offers: readonly object[]) => offersSchema().safeParse(offers).success;

describe('offersSchema', () => {
  test('takes rolls and packs of flat pieces, with a price or without', () => {
    expect(accepts(roll, pieces)).toBe(true);
    expect(accepts({ ...roll, step: '1 yd', least: 36, price: 0 })).toBe(true);
    expect(accepts({ ...pieces, most: 3, price: 400 })).toBe(true);
    expect(accepts(...Array(SIZE_LIMITS.offers).fill(roll))).toBe(true);
  });

  test.each([
    ['no offer', []],
    ['more offers than are read', Array(SIZE_LIMITS.offers + 1).fill(roll)],
    ['another kind', [{ ...roll, kind: 'bolt' }]],
    ['pieces without a count', [{ ...pieces, count: undefined }]],
    ['a roll with sides', [{ ...roll, width: 42, length: 3, count: 1 }]],
    ['half a minor unit', [{ ...roll, price: 0.5 }]],
    ['a price below nothing', [{ ...roll, price: -1 }]],
    ['an unknown key', [{ ...pieces, colour: 'fog' }]],
  ])('refuses %s', (_, offers) => {
    expect(accepts(...offers)).toBe(false);
  });
});
