import { describe, expect, test } from 'vitest';
import { SIZE_LIMITS } from '#core/limits.ts';
import { SIZES } from '#core/tables/sizes.ts';
import { planSchema } from '../../../../api/http/schemas/plan-schema.ts';

const target = { width: 40, height: '50 in' };
const takes = (input: object) => planSchema().safeParse(input).success;

describe('planSchema', () => {
  test.each([
    [target],
    [{ ...target, at: 'sewn' }],
    [{ size: 'throw' }],
    [{ size: 'king', region: 'uk' }],
    [{ bed: { width: 60, length: 80, drop: 12, footDrop: 0 } }],
    [{ columns: 4, rows: 5 }],
  ])('takes the target %j', (wish) => {
    expect(takes({ target: wish })).toBe(true);
  });
  test.each([
    [{}],
    [{ width: 40 }],
    [{ ...target, at: 'dry' }],
    [{ ...target, size: 'throw' }],
    [{ size: 'enormous' }],
    [{ size: 'throw', region: 'mars' }],
    [{ bed: { width: 60 } }],
    [{ columns: 4.5, rows: 5 }],
    [{ columns: 0, rows: 5 }],
    [{ columns: 101, rows: 5 }],
    ['throw'],
    [null],
  ])('refuses the target %j', (wish) => {
    expect(takes({ target: wish })).toBe(false);
  });
  test('takes what a layer is sold as, and refuses an offer of no kind', () => {
    const sold = (...offers: readonly object[]) =>
      takes({ target: { size: 'throw' }, layers: [{ role: 'top', offers }, { role: 'backing' }] });
    const pieces = { kind: 'pieces', id: 'quarter', width: 21, length: 18, count: 1, price: 300 };
    expect(sold({ kind: 'roll', id: 'bolt', price: 1200 }, pieces)).toBe(true);
    expect([sold(), sold({ id: 'bolt' })]).toEqual([false, false]);
  });
  test('knows every size of the table', () => {
    for (const { name } of SIZES) expect(takes({ target: { size: name } })).toBe(true);
  });
  test.each(['block', 'stitch', 'pace', 'tolerance'])(
    'refuses a key that %s does not know',
    (part) => {
      expect(takes({ target, [part]: {} })).toBe(true);
      expect(takes({ target, [part]: { nonsense: 1 } })).toBe(false);
    },
  );
  test('takes a class of one to sixty pupils, in whole numbers', () => {
    expect([1, 12, 60].map((pupils) => takes({ target, pupils }))).toEqual([true, true, true]);
    expect([0, 61, 2.5, '12', null].some((pupils) => takes({ target, pupils }))).toBe(false);
  });

  test('takes whether it is for an infant as true or false alone', () => {
    expect([true, false].map((infant) => takes({ target, infant }))).toEqual([true, true]);
    expect(['yes', 1, null].some((infant) => takes({ target, infant }))).toBe(false);
  });
  test('takes as many cut sizes as the limit has and no more', () => {
    const cuts = Array.from({ length: SIZE_LIMITS.cuts }, () => 8);
    expect([takes({ target, cuts }), takes({ target, cuts: [...cuts, 8] })]).toEqual([true, false]);
    expect(takes({ target, cuts: [] })).toBe(false);
  });
});
