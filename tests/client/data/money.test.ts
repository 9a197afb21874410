import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readMoney, writeMoney, writeMoneyEntry } from '../../../client/data/money.ts';

// Decimals by ISO 4217: none for the yen, two for the euro, three for the Kuwaiti dinar.
const currency = fc.constantFrom('JPY', 'EUR', 'USD', 'KWD');

describe('readMoney', () => {
  test('readMoney(writeMoneyEntry(minor)) is the amount, whatever the currency', () => {
    fc.assert(
      fc.property(currency, fc.integer({ min: 0, max: 1e9 }), (code, minor) => {
        expect(readMoney(writeMoneyEntry(minor, code), code)).toBe(minor);
      }),
    );
  });

  test.each([
    ['11.20', 'EUR', 1120],
    ['11,2', 'EUR', 1120],
    ['11.', 'EUR', 1100],
    ['1 120', 'JPY', 1120],
    ['1.125', 'KWD', 1125],
    ['1.125', 'EUR', undefined],
    ['1.5', 'JPY', undefined],
    ['1,250.00', 'USD', undefined],
    ['-3', 'EUR', undefined],
    ['', 'EUR', undefined],
    ['dear', 'EUR', undefined],
  ])('readMoney(%j, %j) is %j', (typed, code, minor) => {
    expect(readMoney(typed, code)).toBe(minor);
  });
});

describe('writeMoney', () => {
  test.each([
    ['en', 'USD', 123_456, '$1,234.56'],
    ['en', 'JPY', 1234, '¥1,234'],
    ['de', 'EUR', 123_456, '1.234,56\u00a0€'],
    ['en', 'KWD', 1234, 'KWD\u00a01.234'],
  ])('writeMoney(%j, %j, %i) is %j', (language, code, minor, said) => {
    expect(writeMoney(language, code, minor)).toBe(said);
  });
});
