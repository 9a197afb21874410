import { describe, expect, test } from 'vitest';
import {
  nameCloth,
  sayFaultAt,
  sayLength,
  sayMoney,
  sayPurchase,
  tellFault,
} from '../../../../client/elements/counter/counter-context.ts';
import { setCounter } from '../../../support/counter-scene.ts';

const { context } = setCounter({ shop: { '0.width': '900', '0.price': 'dear' } });
const { text } = context;

describe('nameCloth', () => {
  test('nameCloth is the print, a letter spelt out, or the fabric', () => {
    const cloth = { role: 'top', fabric: 'quilting-cotton' } as const;
    expect(nameCloth(text, { cloth: { ...cloth, print: 'A' } }).name).toBe('Print A');
    expect(nameCloth(text, { cloth: { ...cloth, print: 'Oat sprig' } })).toEqual({
      name: 'Oat sprig',
      role: 'Top',
    });
    expect(nameCloth(text, { cloth }).name).toBe('Quilting cotton');
    expect(nameCloth(text, {})).toEqual({ name: 'Your squares', role: '' });
  });
});

describe('figures at the counter', () => {
  test('sayPurchase and sayLength write them as the language does', () => {
    expect(sayPurchase(text, { amount: 2.375, unit: 'yd', text: '' })).toBe('2⅜\u00a0yd');
    expect(sayPurchase(text, { amount: 2.1, unit: 'm', text: '' })).toBe('2.1\u00a0m');
    expect(sayLength(text, 'in', 215.9)).toBe('8½\u00a0in');
    expect(sayLength(text, 'cm', 215, 300)).toBe('21.5 × 30\u00a0cm');
  });

  test('sayMoney has the currency, or hundredths without a sign', () => {
    expect(sayMoney(context, 2813)).toBe('$28.13');
    expect(sayMoney({ ...context, currency: 'JPY' }, 2813)).toBe('¥2,813');
    expect(sayMoney({ ...context, currency: '' }, 2813)).toBe('28.13');
  });
});

describe('faults at the counter', () => {
  test('sayFaultAt says what is wrong at a place of the cloth in hand', () => {
    expect(sayFaultAt(context, 'width')).toBe('That is too large. Give at most 157⅜ in.');
    expect(sayFaultAt(context, 'price')).toBe('That is no price. Write 12.99 or 12,99.');
    expect(sayFaultAt(context, 'left')).toBeUndefined();
  });

  test('tellFault rounds a bound to the eighth that is still within it', () => {
    const fault = { code: 'too-small', path: ['width'], expected: '3.94 in' } as const;
    expect(tellFault(text, fault)).toBe('That is too small. Give at least 4 in.');
    expect(tellFault({ ...text, sentences: undefined }, fault)).toBe(text.light.wrong);
  });
});
