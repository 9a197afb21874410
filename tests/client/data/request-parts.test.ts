import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { layer, length, offer, swatch, washes } from '../../../client/data/request-parts.ts';

describe('the parts that requests share', () => {
  test('length is a number that is not below zero, or a short text', () => {
    const takes = [0, 8.5, '8 1/2', 'x'.repeat(32)].map((value) => v.is(length, value));
    expect(takes).toEqual([true, true, true, true]);
    const refuses = [-1, Number.POSITIVE_INFINITY, '', 'x'.repeat(33), null];
    expect(refuses.map((value) => v.is(length, value))).toEqual(refuses.map(() => false));
  });

  test('layer needs a role and knows its cloths', () => {
    expect(v.is(layer, { role: 'top', fabric: 'denim', prints: 3 })).toBe(true);
    expect(v.is(layer, { fabric: 'denim' })).toBe(false);
    expect(v.is(layer, { role: 'top', fabric: 'cardboard' })).toBe(false);
  });

  test('offer is a length off the roll or packs of flat pieces, priced in whole minor units', () => {
    const pieces = { kind: 'pieces', id: 'quarter', width: 21, length: '18 in', count: 1 };
    const takes = [
      { kind: 'roll', id: 'bolt' },
      { kind: 'roll', id: 'bolt', step: '1 yd', least: 36, price: 0 },
      pieces,
      { ...pieces, most: 3, price: 400 },
    ];
    expect(takes.map((value) => v.is(offer, value))).toEqual(takes.map(() => true));
    const refuses = [
      { kind: 'bolt', id: 'bolt' },
      { kind: 'roll' },
      { ...pieces, count: 0 },
      { ...pieces, most: 1001 },
      { ...pieces, price: 0.5 },
      { kind: 'pieces', id: 'quarter', width: 21, count: 1 },
    ];
    expect(refuses.map((value) => v.is(offer, value))).toEqual(refuses.map(() => false));
  });

  test('swatch needs both ends and a direction; washes are whole, 1 to 50', () => {
    expect(v.is(swatch, { direction: 'length', before: 10, after: 9 })).toBe(true);
    expect(v.is(swatch, { direction: 'length', before: 10 })).toBe(false);
    expect([1, 50, 0, 51, 1.5].map((count) => v.is(washes, count))).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
  });
});
