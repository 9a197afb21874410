import { describe, expect, test } from 'vitest';
import { CURRENCY_EXCEPTIONS, decimalsOf } from '#core/tables/currencies.ts';

/**
 * Codes of ISO 4217 list one as published on 2024-06-25 whose minor unit is not the hundredth, read
 * from the data of npm currency-codes 2.2.0; metals, bond units and test codes left out.
 */
const LIST_ONE: Readonly<Record<number, string>> = {
  0: 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF',
  3: 'BHD IQD JOD KWD LYD OMR TND',
  4: 'CLF UYW',
};

describe('decimalsOf', () => {
  test('decimalsOf JPY, KWD and EUR is 0, 3 and 2', () => {
    expect(['JPY', 'KWD', 'EUR'].map(decimalsOf)).toEqual([0, 3, 2]);
  });

  test('decimalsOf has the exceptions of the published list and no others', () => {
    const rows = CURRENCY_EXCEPTIONS.map(({ decimals, codes }) => [decimals, codes.join(' ')]);
    expect(Object.fromEntries(rows)).toEqual(LIST_ONE);
  });

  test('decimalsOf is at least what the runtime shows, which may drop decimals nobody uses', () => {
    for (const currency of Intl.supportedValuesOf('currency')) {
      const { maximumFractionDigits = 0 } = new Intl.NumberFormat('en', {
        style: 'currency',
        currency,
      }).resolvedOptions();
      expect(decimalsOf(currency)).toBeGreaterThanOrEqual(maximumFractionDigits);
    }
  });
});
