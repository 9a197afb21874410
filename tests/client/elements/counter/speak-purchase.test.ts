import { describe, expect, test } from 'vitest';
import { speakPurchase } from '../../../../client/elements/counter/speak-purchase.ts';

describe('speakPurchase', () => {
  test.each([
    ['en', 2.375, 'yd', 'two and three eighths yards'],
    ['en', 2.2, 'm', '2 m 20'],
    ['de', 2.2, 'm', '2 m 20'],
    ['es', 0.8, 'm', '80 cm'],
    ['fr', 1.055, 'm', '1 m 05,5'],
    ['de', 0.125, 'm', '12,5 cm'],
    ['de', 2.375, 'yd', '2⅜\u00a0yd'],
  ] as const)('speakPurchase(%j) of %d %s is %j', (language, amount, unit, said) => {
    expect(speakPurchase(language, { amount, unit, text: '' })).toBe(said);
  });
});
